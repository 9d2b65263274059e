package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all commands share: help, the two streams, and an end with an exit code. */
abstract class Subcommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  @SuppressWarnings("UnusedVariable") // picocli sets it and acts on it.
  private boolean help;

  /**
   * Does the work.
   *
   * @throws CommandFailure to end with a sentence and an exit code
   */
  abstract ExitCode run() throws CommandFailure;

  @Override
  public final Integer call() throws CommandFailure {
    ExitCode exitCode = run();
    out().flush();
    err().flush();
    return exitCode.code();
  }

  /** What a screen will say, put together while files are still written. */
  static String text(Consumer<PrintWriter> screen) {
    StringWriter text = new StringWriter();
    screen.accept(new PrintWriter(text));
    return text.toString();
  }

  final PrintWriter out() {
    return spec.commandLine().getOut();
  }

  final PrintWriter err() {
    return spec.commandLine().getErr();
  }
}
