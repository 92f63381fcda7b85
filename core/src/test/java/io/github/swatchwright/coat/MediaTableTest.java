package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Use;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MediaTableTest {
  private static final Path PAGE = Path.of("..", "cli-demo", "docs", "media.md");

  @ParameterizedTest(name = "{1} over {0}: paint {2}, wash {3}, varnish {4} ({5})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          acrylic|acrylic|safe   |safe         |safe   |common practice
          acrylic|lacquer|careful|clash lacquer|careful|common practice
          acrylic|enamel |safe   |safe         |safe   |common practice
          acrylic|oil    |safe   |safe         |safe   |common practice
          acrylic|water  |safe   |safe         |safe   |common practice
          lacquer|acrylic|safe   |safe         |safe   |common practice
          lacquer|lacquer|safe   |safe         |safe   |common practice
          lacquer|enamel |safe   |safe         |safe   |common practice
          lacquer|oil    |safe   |safe         |safe   |common practice
          lacquer|water  |safe   |safe         |safe   |common practice
          enamel |acrylic|careful|careful      |careful|common practice
          enamel |lacquer|clash acrylic|clash -|clash acrylic|common practice
          enamel |enamel |careful|clash acrylic|careful|common practice
          enamel |oil    |careful|clash acrylic|careful|common practice
          enamel |water  |careful|careful      |careful|common practice
          oil    |acrylic|careful|careful      |careful|common practice
          oil    |lacquer|clash acrylic|clash -|clash acrylic|common practice
          oil    |enamel |careful|clash acrylic|careful|common practice
          oil    |oil    |careful|clash acrylic|careful|common practice
          oil    |water  |careful|careful      |careful|common practice
          water  |acrylic|careful|clash lacquer|careful|common practice
          water  |lacquer|safe   |safe         |safe   |common practice
          water  |enamel |safe   |safe         |safe   |common practice
          water  |oil    |safe   |safe         |safe   |common practice
          water  |water  |careful|clash lacquer|careful|common practice
          """)
  void everyMediumOverEveryMedium(
      String lower, String upper, String paint, String wash, String varnish, String source) {
    assertThat(source).isEqualTo("common practice");
    List<List<String>> rows =
        MediaTable.rows().stream()
            .filter(row -> row.get(0).equals(lower) && row.get(1).equals(upper))
            .toList();

    assertThat(rows)
        .extracting(row -> row.get(2), row -> row.get(5) + " " + row.get(6))
        .containsExactly(
            tuple("paint", expected(paint)),
            tuple("wash", expected(wash)),
            tuple("varnish", expected(varnish)));
  }

  private static String expected(String words) {
    return words.contains(" ") ? words : words + " -";
  }

  /** Common practice. */
  @Test
  void eachMediumIsThinnedAndSprayedWithItsOwnCautions() {
    assertThat(Arrays.stream(Medium.values()).map(Thinner::of))
        .containsExactly(
            "acrylic thinner", "lacquer thinner", "white spirit", "white spirit", "water");
    for (List<String> row : MediaTable.rows()) {
      boolean solvent = List.of("lacquer", "enamel", "oil").contains(row.get(1));
      assertThat(row.get(7).contains("flames")).isEqualTo(solvent);
      assertThat(row.get(7).contains("acrylic-mist")).isEqualTo(!solvent);
    }
  }

  /** The remedy in words and the varnish between are the same advice. */
  @Test
  void theRemedyOfAClashNamesTheVarnishThatHelps() {
    for (Medium lower : Medium.values()) {
      for (Medium upper : Medium.values()) {
        SolventRule rule = SolventRules.of(lower, upper, true);
        if (rule.verdict() == SolventVerdict.CLASH) {
          assertThat(rule.remedy())
              .contains(
                  MediaTable.between(lower, upper, true)
                      .map(varnish -> varnish.word() + " varnish")
                      .orElse("no varnish"));
        }
      }
    }
  }

  @Test
  void thePageIsWhatTheProgramSays() throws IOException {
    if (Boolean.getBoolean("docs.write")) {
      Files.writeString(PAGE, MediaTable.page());
    }
    assertThat(Files.readString(PAGE))
        .as("write it with -Ddocs.write=true")
        .isEqualTo(MediaTable.page());
  }

  @Test
  void everyClashOfARandomStackIsNamedAndEveryProposedVarnishRemovesIt() {
    Random random = new Random(20_261_128);
    int clashes = 0;
    int sealed = 0;
    for (int stack = 0; stack < 200; stack++) {
      Base base = new Base.OfMix(paint(random, Use.PAINT));
      List<Coat> coats = new ArrayList<>();
      for (int i = 1 + random.nextInt(5); i > 0; i--) {
        Use use = List.of(Use.PAINT, Use.WASH, Use.FILTER).get(random.nextInt(3));
        double thinner = use == Use.PAINT ? random.nextInt(3) : 0;
        coats.add(new Coat(paint(random, use), 1, thinner, random.nextInt(4) == 0 ? 0.5 : 1));
      }
      List<OrderNote> notes = CoatOrder.check(base, coats);
      for (int coat = 1; coat <= coats.size(); coat++) {
        Coat upper = coats.get(coat - 1);
        boolean clash = reaches(base, coats, coat - 1).stream().anyMatch(l -> clashes(l, upper));
        int number = coat;
        assertThat(
                notes.stream()
                    .anyMatch(n -> n.coat() == number && n.verdict() == SolventVerdict.CLASH))
            .isEqualTo(clash);
        clashes += clash ? 1 : 0;
        Optional<Medium> varnish =
            CoatOrder.seals(base, coats.subList(0, coat - 1), List.of(upper)).stream().findFirst();
        if (clash && varnish.isPresent()) {
          sealed++;
          List<Coat> mended = new ArrayList<>(coats);
          mended.add(coat - 1, Coat.of(mix(varnish.get(), Use.VARNISH)));
          assertThat(CoatOrder.check(base, mended))
              .filteredOn(n -> n.coat() == number || n.coat() == number + 1)
              .noneMatch(n -> n.verdict() == SolventVerdict.CLASH);
        }
      }
    }
    assertThat(clashes).isPositive();
    assertThat(sealed).isPositive();
    System.out.printf("200 stacks: %d clashes, %d mended by a varnish%n", clashes, sealed);
  }

  private static boolean clashes(Medium lower, Coat upper) {
    return SolventRules.of(lower, upper.medium(), upper.isWash()).verdict() == SolventVerdict.CLASH;
  }

  /**
   * What a thinner reaches, read off the stack: down to the first coat of paint that covers all.
   */
  private static List<Medium> reaches(Base base, List<Coat> coats, int upper) {
    List<Medium> reached = new ArrayList<>();
    for (int i = upper - 1; i >= 0; i--) {
      Coat coat = coats.get(i);
      reached.add(coat.medium());
      if (coat.coverage() == 1 && coat.mix().parts().get(0).paint().use() == Use.PAINT) {
        return reached;
      }
    }
    base.medium().ifPresent(reached::add);
    return reached;
  }

  private static Mix paint(Random random, Use use) {
    return mix(List.of(Medium.values()).get(random.nextInt(Medium.values().length)), use);
  }

  private static Mix mix(Medium medium, Use use) {
    return Mix.of(Paint.of(medium.word() + " " + use.word(), medium).withUse(use));
  }
}
