package org.coatrun.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.coatrun.cli.command.CoatrunCommand;
import org.coatrun.cli.console.FailureReport;
import picocli.CommandLine;

/** Starts the program: wires the streams, runs the command, ends with its exit code. */
public final class Main {

  private Main() {}

  public static void main(String[] args) {
    CommandLine command =
        CoatrunCommand.commandLine(
            utf8(FileDescriptor.out), utf8(FileDescriptor.err), args.length == 0 ? "" : args[0]);
    int exitCode = run(command, args);
    command.getOut().flush();
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
  private static PrintWriter utf8(FileDescriptor stream) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), false);
  }
}
