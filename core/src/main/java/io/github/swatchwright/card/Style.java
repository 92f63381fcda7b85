package io.github.swatchwright.card;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Objects;

/** The style sheets. They hold none of the characters that {@link Markup} escapes. */
enum Style {
  /** Of a page. */
  PAGE("page.css"),

  /** Of a drawn sheet. */
  SHEET("sheet.css");

  private final String resource;

  Style(String resource) {
    this.resource = resource;
  }

  /** The style sheet. */
  String text() {
    try (InputStream in = Objects.requireNonNull(Style.class.getResourceAsStream(resource))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a Content-Security-Policy knows it by. */
  String hash() {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text().getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
