package io.github.swatchwright.cli;

import io.github.swatchwright.cli.photo.PhotoBytes;
import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.testdata.FuzzSubject;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the command line reads from outside: pictures and its own arguments. */
enum CliFuzzTarget implements FuzzSubject {
  /** A picture's headers and pixels; it is read or refused by one line. */
  PHOTO {
    @Override
    public List<byte[]> seeds() {
      // Neither black nor white, which count as clipped.
      BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
      for (int x = 0; x < 24; x++) {
        for (int y = 0; y < 16; y++) {
          image.setRGB(x, y, 0x604830 + 0x020301 * x + 0x030104 * y);
        }
      }
      byte[] profile = PhotoBytes.profile(RgbSpace.DISPLAY_P3);
      return List.of(
          PhotoBytes.png(image),
          PhotoBytes.withChunk(PhotoBytes.png(image), "iCCP", PhotoBytes.profileChunk(profile)),
          PhotoBytes.tiff(image),
          PhotoBytes.jpeg(image),
          PhotoBytes.jpeg(
              image, PhotoBytes.orientationSegment(6), PhotoBytes.profileSegment(profile)));
    }

    @Override
    public boolean feed(byte[] input) {
      Path file = Spoilt.PATH;
      try {
        Files.write(file, input);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      try {
        RegionSampler.sample(PhotoFile.open(file), new Region(0, 0, 8, 8));
        return true;
      } catch (IllegalArgumentException refusal) {
        if (refusal.getMessage() == null || refusal.getMessage().isBlank()) {
          throw new AssertionError("refused without a reason", refusal);
        }
        return false;
      }
    }
  },

  /** A command line, one argument a line; it ends in a result or one line. */
  ARGUMENTS {
    @Override
    public List<byte[]> seeds() {
      return Stream.of(
              "compare\n#808080\n#828282",
              "compare\nlab(50, 1, 2)\nRust\n--json",
              "predict\nWhite:2, Black:1\nRust:0.5\n--light\nA",
              "match\n#8A4B2A\n--max-drops\n4\n--paints\n2\n--alternatives\n3",
              "match\nlab(40, 20, 20)\n--max-drops\n3\n--only\nWhite\n--without\nBlack",
              "correct\nWhite:6, Black:2\n--measured\n#C3907F\n--target\n#B47A68",
              "coat\n--base\n#808080\n--coats\nWhite:2@1:4 over 60%",
              "ladder\nBlack\nWhite\n--rungs\n3",
              "shelf\n--json",
              "--help")
          .map(line -> line.getBytes(StandardCharsets.UTF_8))
          .toList();
    }

    @Override
    public boolean feed(byte[] input) {
      String line = new String(input, StandardCharsets.UTF_8);
      if (LEFT_OUT.matcher(line).find()) {
        return false;
      }
      String[] args = (line + "\n--shelf\n" + Run.fiveShelf()).split("\n", -1);
      Run run = Run.of(args);
      boolean done = run.status() == Main.DONE;
      boolean refused =
          run.status() == Main.REFUSED && run.out().isEmpty() && run.err().lines().count() == 1;
      if (!done && !refused) {
        throw new AssertionError(
            "status " + run.status() + " of " + String.join(" ", args) + ": " + run.err());
      }
      return done;
    }
  };

  /** What parsers of arguments and pictures are known to stumble over. */
  static final List<String> WORDS =
      List.of(
          "\n",
          "--",
          "--json",
          "-1",
          "0",
          "NaN",
          "1e99",
          "%",
          "@",
          ":",
          ",",
          "'",
          "\"",
          "ß",
          "--help",
          "\u0000\u0000\u0000\u0000",
          "\u007f\u007f\u007f\u007f",
          "Exif\u0000\u0000",
          "IHDR",
          "iCCP",
          "MM\u0000*");

  /** Options that write or read files, and slow calls: not for a fuzzer. */
  private static final Pattern LEFT_OUT =
      Pattern.compile(
          "--(out|card|picture|table|notebook|preview|plot|import|export|catalogue|shelf)|[/\\\\~]"
              + "|--(max-drops|paints|rungs)[=\\n]*\\d{2}");

  /** Made when it is first asked for. */
  private static final class Spoilt {
    static final Path PATH = create();

    private static Path create() {
      try {
        Path file = Files.createTempFile("fuzz", ".picture");
        file.toFile().deleteOnExit();
        return file;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
