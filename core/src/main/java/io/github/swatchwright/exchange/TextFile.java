package io.github.swatchwright.exchange;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Bytes from outside as text, within {@link ReadLimits#USUAL}. */
final class TextFile {

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
    if (bytes.length > ReadLimits.USUAL.mostBytes()) {
      throw new IllegalArgumentException(
          source
              + ": is longer than "
              + ReadLimits.USUAL.mostBytes()
              + " bytes, the most that is read");
    }
  }
}
