package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.util.List;
import org.coatrun.cli.console.FailureReport;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program as a whole: it does nothing without a command. */
@Command(
    name = "coatrun",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    header = "Takeoff and line planning for sprayed fire-resistive material, from IFC models.",
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "COATRUN_OPTS is passed to the JVM, for example COATRUN_OPTS=-Xmx4g.",
      "This is a planning aid: the tested listing, the adopted code and the engineer of record"
          + " govern."
    })
public final class CoatrunCommand implements Runnable {

  private static final int WIDTH = 96;

  @Spec private CommandSpec spec;

  private static final List<Class<? extends Subcommand>> SUBCOMMANDS =
      List.of(
          SurveyCommand.class,
          JobCommand.class,
          PlanCommand.class,
          TakeoffCommand.class,
          LineCommand.class,
          LiftCommand.class,
          PailCommand.class,
          ReadingsCommand.class);

  /** The command line with all commands, ready to run; it prints to these two and nowhere else. */
  public static CommandLine commandLine(PrintWriter out, PrintWriter err) {
    return commandLine(out, err, "");
  }

  /**
   * The same for one run.
   *
   * @param first of the arguments, or empty: where it names a command, the others are not made,
   *     which would take longer than a small survey
   */
  public static CommandLine commandLine(PrintWriter out, PrintWriter err, String first) {
    FailureReport failures = new FailureReport();
    CommandLine command = new CommandLine(new CoatrunCommand());
    subcommands(first).forEach(command::addSubcommand);
    ExitCodeTable.addTo(command);
    return command
        .setOut(out)
        .setErr(err)
        .setUsageHelpWidth(WIDTH)
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(failures)
        .setExecutionExceptionHandler(failures);
  }

  private static List<Class<? extends Subcommand>> subcommands(String first) {
    List<Class<? extends Subcommand>> named =
        SUBCOMMANDS.stream()
            .filter(c -> c.getAnnotation(Command.class).name().equals(first))
            .toList();
    return named.isEmpty() ? SUBCOMMANDS : named;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "no command given");
  }
}
