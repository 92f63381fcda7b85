package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.SAXException;

/** Every page against the Nu HTML checker, which checks its style sheet and its SVG as well. */
class CardsAreValidTest {
  /**
   * The checker doesn't compare hashes, and takes a style sheet that is allowed by its hash for one
   * that isn't. The browser test shows that it is.
   */
  private static final String NOT_COMPARED =
      "Inline style violates Content Security Policy (meta tag)";

  private static List<String> faults(String page) throws IOException, SAXException {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
    String report =
        validator.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    List<String> faults = new ArrayList<>();
    for (JsonNode message : new ObjectMapper().readTree(report).get("messages")) {
      String text = message.get("message").asText();
      if (!text.startsWith(NOT_COMPARED)) {
        faults.add(text + " in " + message.path("extract").asText());
      }
    }
    return faults;
  }

  @Test
  void pagesHaveNoFaults(@TempDir Path folder) throws IOException, SAXException {
    for (CardExample example : CardExample.all(folder)) {
      assertThat(faults(Files.readString(example.make(folder, "html").file())))
          .as(example.toString())
          .isEmpty();
    }
  }

  @Test
  void theCheckerFindsFaults() throws IOException, SAXException {
    String page =
        "<!DOCTYPE html><html lang=\"en\"><head><title>x</title>"
            + "<style>p { colour: red; }</style></head><body><p><svg><rct/></svg></body></html>";
    assertThat(faults(page)).anyMatch(fault -> fault.contains("colour")).hasSizeGreaterThan(1);
  }
}
