package org.coatrun.cli;

import java.io.FileDescriptor;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.coatrun.cli.command.CoatrunCommand;
import org.coatrun.cli.console.FailureReport;
import org.coatrun.cli.console.Screen;
import picocli.CommandLine;

/** Starts the program: wires the streams, runs the command, ends with its exit code. */
public final class Main {

  private Main() {}

  public static void main(String[] args) {
    Screen screen = new Screen(FileDescriptor.out);
    CommandLine command =
        CoatrunCommand.commandLine(
            utf8(screen), utf8(new Screen(FileDescriptor.err)), args.length == 0 ? "" : args[0]);
    int exitCode = run(command, args);
    command.getOut().flush();
    if (exitCode == 0 && screen.failure().isPresent()) {
      exitCode = FailureReport.cutOff(command, screen.failure().get());
    }
    command.getErr().flush();
    System.exit(exitCode);
  }

  // Errors, such as memory that ran out, pass by the handlers of picocli.
  @SuppressWarnings("CatchingUnchecked")
  private static int run(CommandLine command, String[] args) {
    try {
      return command.execute(args);
    } catch (Error error) {
      return FailureReport.fault(command, error);
    }
  }

  // The same bytes on every machine, whatever its locale.
  private static PrintWriter utf8(Screen screen) {
    return new PrintWriter(new OutputStreamWriter(screen, StandardCharsets.UTF_8), false);
  }
}
