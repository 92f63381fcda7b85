package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.match.ShelfReach;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ReachPlotTest {
  private static final String HOSTILE = "<script>alert(1)</script> \" ' & \u202E\uD83D\uDEA2\u0001";

  private static Paint paint(String name, double l, double a, double b) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(Lab.ofD65(l, a, b)));
  }

  private static ReachPlot plot(String shelfName) {
    ShelfOptics optics =
        ShelfOptics.estimate(
            Shelf.of(
                shelfName,
                List.of(
                    paint("White", 95, 0, 0),
                    paint("Black", 15, 0, 0),
                    paint("<b>Blue", 35, 5, -40))));
    return new ReachPlot(
        ShelfReport.of(optics, TristimulusWeights.D65),
        ShelfReach.of(optics, TristimulusWeights.D65));
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList found = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  @Test
  void drawsBottlesMixesAndGapsByShape() throws Exception {
    ReachPlot plot = plot("Bench");
    Document svg = parsed(plot.toSvg());

    // Background; three bottles from above, of which one has a hue; one in the legend.
    assertThat(elements(svg, "rect")).hasSize(6);
    assertThat(elements(svg, "title"))
        .extracting(Element::getTextContent)
        .containsExactly("White", "Black", "<b>Blue", "<b>Blue");
    assertThat(elements(svg, "circle")).hasSizeGreaterThan(10);
    assertThat(elements(svg, "path")).hasSizeGreaterThan(50);
    assertThat(svg.getDocumentElement().getAttribute("aria-label"))
        .startsWith("What can be mixed from Bench. ")
        .contains("Gaps: ");
  }

  @Test
  void namesAreInert() throws Exception {
    String svg = plot(HOSTILE + "x".repeat(10_000)).toSvg();

    assertThat(elements(parsed(svg), "script")).isEmpty();
    assertThat(svg).doesNotContain("<script").hasSizeLessThan(200_000);
  }

  @Test
  void refersToNothingOutside() {
    assertThat(plot("Bench").toSvg().replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http", "href", "url(", "<style", "@import");
  }
}
