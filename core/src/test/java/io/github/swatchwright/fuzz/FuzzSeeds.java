package io.github.swatchwright.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes what a coverage-guided fuzzer starts from: good inputs and a dictionary. */
public final class FuzzSeeds {
  private FuzzSeeds() {}

  /**
   * Writes the seeds of one target.
   *
   * @param args the target's name, the folder for its seeds, the file for the dictionary
   */
  public static void main(String[] args) throws IOException {
    List<byte[]> seeds = FuzzTarget.valueOf(args[0]).seeds();
    Path folder = Files.createDirectories(Path.of(args[1]));
    for (int i = 0; i < seeds.size(); i++) {
      Files.write(folder.resolve("seed-" + i), seeds.get(i));
    }
    Files.write(Path.of(args[2]), FuzzTarget.WORDS.stream().map(FuzzSeeds::entry).toList());
  }

  /** A line of libFuzzer's dictionary format: bytes that aren't plain ASCII are escaped. */
  private static String entry(String word) {
    StringBuilder line = new StringBuilder("\"");
    for (byte b : word.getBytes(StandardCharsets.UTF_8)) {
      boolean plain = b >= ' ' && b < 0x7F && b != '"' && b != '\\';
      line.append(plain ? String.valueOf((char) b) : "\\x%02X".formatted(b & 0xFF));
    }
    return line.append('"').toString();
  }
}
