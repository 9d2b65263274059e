package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.util.stream.Stream;
import org.coatrun.cli.console.FailureReport;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** The program as a whole: it does nothing without a command. */
public final class CoatrunCommand implements Runnable {

  private static final int WIDTH = 96;

  private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);

  private CoatrunCommand() {
    spec.name("coatrun");
    spec.versionProvider(new VersionText());
    spec.usageMessage()
        .header("Takeoff and line planning for sprayed fire-resistive material, from IFC models.")
        .synopsisSubcommandLabel("COMMAND")
        .footer(
            "",
            "COATRUN_OPTS is passed to the JVM, for example COATRUN_OPTS=-Xmx4g.",
            "This is a planning aid: the tested listing, the adopted code and the engineer of record"
                + " govern.");
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description("Show this help message and exit.")
            .build());
    spec.addOption(
        OptionSpec.builder("-V", "--version")
            .versionHelp(true)
            .description("Print version information and exit.")
            .build());
    Stream.of(
            new SurveyCommand(),
            new JobCommand(),
            new PlanCommand(),
            new TakeoffCommand(),
            new LineCommand(),
            new LiftCommand(),
            new PailCommand(),
            new ReadingsCommand())
        .map(Subcommand::spec)
        .forEach(s -> spec.addSubcommand(s.name(), s));
  }

  /** The command line with all commands, ready to run; it prints to these two and nowhere else. */
  public static CommandLine commandLine(PrintWriter out, PrintWriter err) {
    FailureReport failures = new FailureReport();
    CommandLine command = new CommandLine(new CoatrunCommand().spec);
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

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "no command given");
  }
}
