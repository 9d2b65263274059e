package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What all commands share: help, the two streams, and an end with an exit code.
 *
 * <p>Commands and their options are put together in code, not by annotations: Java makes a class
 * for each kind of those when it reads them, which takes a good part of a small run.
 */
abstract class Subcommand implements Callable<Integer> {

  private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);

  /**
   * A command without options but for help.
   *
   * @param header what it does, in one line
   * @param description the same at length, in paragraphs
   */
  Subcommand(String name, String header, String... description) {
    spec.name(name);
    spec.usageMessage().header(header).description(description);
    takes(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description("Show this help and exit.")
            .build());
  }

  /** Adds options or parameters. */
  final void takes(ArgSpec... args) {
    for (ArgSpec arg : args) {
      spec.add(arg);
    }
  }

  /** The command as picocli runs it. */
  final CommandSpec spec() {
    return spec;
  }

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
