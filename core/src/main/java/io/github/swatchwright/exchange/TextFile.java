package io.github.swatchwright.exchange;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Bytes from outside as text, within the limits that the package comment states. */
final class TextFile {
  static final int MOST_BYTES = 10_000_000;
  static final int LONGEST_FIELD = 20_000;
  static final int MOST_FIELDS = 2_000;

  private TextFile() {}

  /** UTF-8, which may begin with a byte order mark. */
  static String utf8(byte[] bytes, String source) {
    checkLength(bytes, source);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new IllegalArgumentException(
          source + ": is not UTF-8 text; save it with that encoding", e);
    }
  }

  /** UTF-8 or else ISO 8859-1, which older instruments write. */
  static String utf8OrLatin1(byte[] bytes, String source) {
    checkLength(bytes, source);
    try {
      return utf8(bytes, source);
    } catch (IllegalArgumentException e) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }

  private static void checkLength(byte[] bytes, String source) {
    if (bytes.length > MOST_BYTES) {
      throw new IllegalArgumentException(
          source + ": is longer than " + MOST_BYTES + " bytes, the most that is read");
    }
  }
}
