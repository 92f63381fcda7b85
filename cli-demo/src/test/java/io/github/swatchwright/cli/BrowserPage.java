package io.github.swatchwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * A page in a browser.
 *
 * @param browser the browser
 * @param session the page's session
 * @param address what it shows
 */
record BrowserPage(Chromium browser, String session, URI address) {
  private static final int WIDTH = 760;
  private static final int HEIGHT = 900;

  /** Where things are on the page, CSS pixels from its top left corner. */
  record Place(double x, double y) {}

  static BrowserPage load(Chromium browser, String session, URI address) {
    BrowserPage page = new BrowserPage(browser, session, address);
    for (String domain : List.of("Page", "Runtime", "Log", "Network", "Accessibility")) {
      page.call(domain + ".enable", Map.of());
    }
    page.call(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", WIDTH, "height", HEIGHT, "deviceScaleFactor", 1, "mobile", false));
    page.call("Page.navigate", Map.of("url", address.toString()));
    long end = System.nanoTime() + Chromium.PATIENCE.toNanos();
    while (browser.events(session, "Page.loadEventFired").isEmpty()) {
      if (System.nanoTime() > end) {
        throw new IllegalStateException(address + " wasn't loaded");
      }
      sleep();
    }
    return page;
  }

  private static void sleep() {
    try {
      Thread.sleep(10);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private JsonNode call(String method, Map<String, ?> parameters) {
    return browser.call(session, method, parameters);
  }

  /** The value of a JavaScript expression. */
  JsonNode evaluate(String expression) {
    JsonNode result =
        call("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true));
    if (result.has("exceptionDetails")) {
      throw new IllegalStateException(result.toString());
    }
    return result.get("result").path("value");
  }

  /** Shows the page as for a medium and a colour scheme. */
  void show(String medium, String scheme) {
    call(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** What was written to the console, or went wrong. */
  List<JsonNode> complaints() {
    return browser.events(
        session, "Runtime.consoleAPICalled", "Runtime.exceptionThrown", "Log.entryAdded");
  }

  /** What was asked of the network or the disk. */
  List<String> requests() {
    return browser.events(session, "Network.requestWillBeSent").stream()
        .map(event -> event.path("request").path("url").asText())
        .toList();
  }

  /** The middles of the elements that a CSS selector finds, in the order of the document. */
  List<Place> middles(String selector) {
    JsonNode found =
        evaluate(
            String.format(
                Locale.ROOT,
                "Array.from(document.querySelectorAll('%s')).map(e => {"
                    + "const r = e.getBoundingClientRect();"
                    + "return {x: r.x + r.width / 2 + scrollX, y: r.y + r.height / 2 + scrollY};})",
                selector));
    List<Place> middles = new ArrayList<>();
    found.forEach(
        place -> middles.add(new Place(place.get("x").asDouble(), place.get("y").asDouble())));
    return middles;
  }

  /** Presses the mouse at one place and lets it go at another; a click where they are the same. */
  void drag(Place from, Place to) {
    mouse("mousePressed", from);
    mouse("mouseMoved", new Place((from.x() + to.x()) / 2, (from.y() + to.y()) / 2));
    mouse("mouseMoved", to);
    mouse("mouseReleased", to);
  }

  private void mouse(String type, Place at) {
    call(
        "Input.dispatchMouseEvent",
        Map.of(
            "type",
            type,
            "x",
            at.x(),
            "y",
            at.y(),
            "button",
            "left",
            "buttons",
            1,
            "clickCount",
            1));
  }

  /** Presses a key by its name, such as {@code ArrowLeft}; whatever has the focus gets it. */
  void press(String key) {
    for (String type : List.of("rawKeyDown", "keyUp")) {
      call("Input.dispatchKeyEvent", Map.of("type", type, "key", key));
    }
  }

  /** Types a text into what has the focus. */
  void type(String text) {
    call("Input.insertText", Map.of("text", text));
  }

  /** All names in the accessibility tree: what a screen reader reads. */
  String spoken() {
    StringBuilder names = new StringBuilder();
    for (JsonNode node : call("Accessibility.getFullAXTree", Map.of()).get("nodes")) {
      if (!node.path("ignored").asBoolean()) {
        names.append(node.path("name").path("value").asText()).append('\n');
      }
    }
    return names.toString();
  }

  /** The page as it is printed, with its own paper size: a PDF document. */
  byte[] printed() {
    JsonNode pdf =
        call("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
    return Base64.getDecoder().decode(pdf.get("data").asText());
  }

  /** The whole page as a picture. */
  BufferedImage screenshot() {
    JsonNode size = call("Page.getLayoutMetrics", Map.of()).get("cssContentSize");
    Map<String, Object> clip =
        Map.of(
            "x", 0,
            "y", 0,
            "width", size.get("width").asDouble(),
            "height", size.get("height").asDouble(),
            "scale", 1);
    JsonNode shot =
        call(
            "Page.captureScreenshot",
            Map.of("format", "png", "captureBeyondViewport", true, "clip", clip));
    try {
      return ImageIO.read(
          new ByteArrayInputStream(Base64.getDecoder().decode(shot.get("data").asText())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
