package io.github.swatchwright.cli;

import io.github.swatchwright.cli.terminal.Terminal;
import io.github.swatchwright.testdata.FuzzSubject;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;

/**
 * Command lines, one argument a line, parsed or refused in a line; no command runs. All commands
 * are set up once, since that takes far longer than to parse a line.
 */
final class CommandLineTarget implements FuzzSubject {
  private static final PrintStream NOWHERE =
      new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);

  private final CommandLine commands =
      Main.commandLine(Output.of(NOWHERE, NOWHERE, Terminal.FILE, new TypedLine(List.of())));

  @Override
  public String name() {
    return "COMMAND_LINE";
  }

  @Override
  public List<byte[]> seeds() {
    Stream<byte[]> others =
        Stream.of(
                "reach\n#2A7B3C\n--catalogue=c.json\n--also\nwash\n--medium=oil",
                "plan\nd.json\n--starts\n2031-12-05\n--done=3\n--measured\n#6A7074\n--card=d.html",
                "sample\np.jpg\n--region\n40%,40%,10%,10%\n--grey=1,2,3,4@18%",
                "sample\np.jpg\n--colours=4\n--preview=p.png",
                "sample\np.jpg\n--at=3,4\n--radius\n5",
                "sheet\n--names\nA, B\n--out=s.pdf\n--paper\nA5\n--tints=A:W",
                "sheet\n--read\np.jpg\n--grey\n18%\n--out\nb.json\n--picture=s.png\n--replace",
                "calibrate\nc.json\n--next\n--for=#808080\n--fit-surface\n--out=s.json",
                "notebook\nn.jsonl\n--table=t.csv",
                "completion",
                "--version")
            .map(line -> line.getBytes(StandardCharsets.UTF_8));
    return Stream.concat(CliFuzzTarget.ARGUMENTS.seeds().stream(), others).toList();
  }

  @Override
  public boolean feed(byte[] input) {
    try {
      commands.parseArgs(new String(input, StandardCharsets.UTF_8).split("\n", -1));
      return true;
    } catch (CommandLine.ParameterException refused) {
      if (UsageMessage.of(refused).isBlank()) {
        throw new AssertionError("refused without a reason", refused);
      }
      return false;
    }
  }
}
