package io.github.swatchwright.cli.terminal;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.colour.Srgb;
import java.security.SecureRandom;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Text on its way to a terminal: what can't be seen becomes spaces, and only the colour blocks that
 * were made here become escape sequences.
 *
 * <p>Names of paints, files and regions come from outside and may hold escape sequences of their
 * own. So a block travels through the text as a stand-in as wide as it, of seven characters that
 * are drawn at random from Unicode's private use plane and that nobody outside can guess.
 */
public final class ScreenText {
  private static final int BLOCK_WIDTH = 7;
  private static final int FIRST = 0xF0000;
  private static final int COUNT = 0xFFFE;
  private static final Pattern STAND_IN =
      Pattern.compile("[\\x{F0000}-\\x{FFFFD}]{" + BLOCK_WIDTH + "}");

  private final TerminalColours colours;
  private final Map<String, String> blocks = new HashMap<>();

  /** Text for a terminal that shows colours in that way. */
  public ScreenText(TerminalColours colours) {
    this.colours = colours;
  }

  /** What stands for a block of the colour and a space, or nothing where colours aren't shown. */
  public String block(Srgb colour) {
    String block = colours.block(colour);
    if (block.isEmpty()) {
      return "";
    }
    SecureRandom random = new SecureRandom();
    StringBuilder standIn = new StringBuilder();
    for (int i = 0; i < BLOCK_WIDTH; i++) {
      standIn.appendCodePoint(FIRST + random.nextInt(COUNT));
    }
    blocks.put(standIn.toString(), block);
    return standIn.toString();
  }

  /** The line as it may be printed. */
  public String line(String text) {
    String shown = Printable.oneLine(text);
    return blocks.isEmpty()
        ? shown
        : STAND_IN
            .matcher(shown)
            .replaceAll(found -> blocks.getOrDefault(found.group(), " ".repeat(BLOCK_WIDTH)));
  }
}
