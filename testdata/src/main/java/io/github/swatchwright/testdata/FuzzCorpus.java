package io.github.swatchwright.testdata;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Inputs that once led a fuzzer to new code, kept to be tried again in every build: a file for each
 * subject, an input a line. Bytes other than plain ASCII are written as {@code \xNN}.
 */
public final class FuzzCorpus {
  private static final int ESCAPE = 4;
  private static final int HEX = 16;

  private FuzzCorpus() {}

  /** What is kept for a subject of that name; empty when there is nothing. */
  public static List<byte[]> of(String name) {
    try (InputStream in = FuzzCorpus.class.getResourceAsStream(resource(name))) {
      if (in == null) {
        return List.of();
      }
      String text = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      return text.lines().map(FuzzCorpus::input).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String resource(String name) {
    return "fuzz/" + name.toLowerCase(Locale.ROOT) + ".txt";
  }

  /**
   * Writes what is to be kept.
   *
   * @param folder the folder of this package among the resources
   */
  public static void write(Path folder, String name, List<byte[]> inputs) throws IOException {
    Path file = folder.resolve(resource(name));
    Files.createDirectories(file.resolveSibling(""));
    Files.write(file, inputs.stream().map(FuzzCorpus::line).toList());
  }

  /** An input as a line. */
  public static String line(byte[] input) {
    StringBuilder line = new StringBuilder();
    for (byte b : input) {
      boolean plain = b >= ' ' && b < 0x7F && b != '\\';
      line.append(
          plain ? String.valueOf((char) b) : String.format(Locale.ROOT, "\\x%02X", b & 0xFF));
    }
    return line.toString();
  }

  /** The input that a line stands for. */
  static byte[] input(String line) {
    ByteArrayOutputStream input = new ByteArrayOutputStream();
    for (int i = 0; i < line.length(); i++) {
      if (line.charAt(i) == '\\') {
        input.write(Integer.parseInt(line.substring(i + 2, i + ESCAPE), HEX));
        i += ESCAPE - 1;
      } else {
        input.write(line.charAt(i));
      }
    }
    return input.toByteArray();
  }
}
