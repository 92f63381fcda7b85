package io.github.swatchwright.fuzz;

import io.github.swatchwright.json.SheetLayoutJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetCode;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** Short good inputs which together use every field of their format, for {@link ParseTarget}. */
final class ParseSeeds {
  /** All that can be said about a paint, but what test cards taught. */
  static final List<byte[]> SHELF =
      of(
          """
          {"format":"swatchwright-shelf","version":1,"name":"S","surface":{"k1":0.03,"k2":0.4},"paints":[
          {"name":"A","medium":"enamel","finish":"gloss","masstone":{"lab":[50,10,-10]},"make":"single-pigment",
          "hiding":{"contrastRatio":0.9},"dropMillilitres":0.045,"swatchError":1.5,"use":"ink","thinned":true}]}
          """,
          """
          {"format":"swatchwright-shelf","version":1,"name":"S","paints":[{"name":"D","medium":"lacquer","notes":"n",
          "hiding":{"scattering":0.5},
          "bottle":{"leftMillilitres":4.5,"pricePerMillilitre":0.2,"densityGramsPerMillilitre":1.3,"thinner":"spirit"}}]}
          """,
          """
          {"format":"swatchwright-shelf","version":1,"name":"S","paints":[
          {"name":"B","medium":"oil","finish":"satin","effect":"pearl","hiding":{"word":"opaque"},
          "masstone":{"reflectance":{"from":400,"step":40,"values":[0.1,0.2,0.3,0.4,0.4,0.4,0.4,0.4]}}}]}
          """,
          """
          {"format":"swatchwright-shelf","version":1,"name":"S","paints":[
          {"name":"C","medium":"acrylic","make":"ready-mixed","hiding":{"coats":3},
          "drawdown":{"coats":1,"black":{"base":{"srgb":"#101010"},"measured":{"srgb":"#806020"}},
          "white":{"base":{"srgb":"#F0F0F0"},"measured":{"srgb":"#C49030"}}}}]}
          """);

  /** What test cards taught. */
  static final List<byte[]> OPTICS =
      of(
          ("{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"S\",\"paints\":[{\"name\":\"A\",\"medium\":\"oil\","
              + "\"masstone\":{\"srgb\":\"#C48A2C\"},\"optics\":{\"from\":380,\"step\":10,\"z\":["
              + numbers(36)
              + "],\"u\":["
              + numbers(36)
              + "],\"cards\":6,\"residual\":0.4,\"width\":0.9,"
              + "\"days\":[{\"painted\":\"2026-03-01\",\"logStrength\":0.14,\"sd\":0.17}],"
              + "\"rows\":[{\"row\":12,\"slopes\":["
              + numbers(73)
              + "]}]}}]}"));

  /** A plan with every kind of step. */
  static final List<byte[]> PLAN =
      of(
          """
          {"format":"swatchwright-plan","version":1,"name":"D","notes":"n","starts":"2031-05-06",
          "bench":{"weekdays":["evening"],"weekends":["morning","evening"]},
          "application":{"dryMicrometres":15,"volumeSolids":0.3,"transfer":0.5},
          "areas":[{"name":"Hull","squareCentimetres":420,"bare":{"srgb":"#808080"},"steps":[
          {"step":"base","target":{"srgb":"#5B6468"}},
          {"step":"chipping-medium"},
          {"step":"whitewash","mix":"Titanium white:6, Deckhouse cream:1","coats":2,"thinner":2,"worn":0.15},
          {"step":"varnish","finish":"matt"}]}]}
          """,
          """
          {"format":"swatchwright-plan","version":1,"name":"D","areas":[{"name":"B","squareCentimetres":90,"steps":[
          {"step":"base","paint":"Hull black"},{"step":"base","target":{"photo":"p.jpg@1,2,3,4"}},
          {"step":"ladder","from":"Red oxide:1","to":{"lab":[40,20,20]},"rungs":4,"for":"rust"},
          {"step":"speckle","paint":"Quay-mud brown","coverage":0.05}]}]}
          """);

  /** A sheet's layout. */
  static final List<byte[]> LAYOUT =
      of(SheetLayoutJson.toText(SheetLayout.of(SheetPage.of(Paper.A5, List.of("A", "=A:5, B:1")))));

  /** What the code of a sheet says. */
  static final List<byte[]> SHEET_CODE =
      of(
          SheetCode.toText(
              SheetPage.pages(Paper.LETTER, List.of("A", "B"), 12, "5F3A9C", Medium.ENAMEL).get(0)),
          "SWATCHSHEET1 A4 3x6 1/2 5F3A9C - acrylic\nWhite");

  private ParseSeeds() {}

  static List<byte[]> of(String... texts) {
    return Stream.of(texts).map(text -> text.getBytes(StandardCharsets.UTF_8)).toList();
  }

  private static String numbers(int count) {
    return String.join(",", Collections.nCopies(count, "-0.5"));
  }
}
