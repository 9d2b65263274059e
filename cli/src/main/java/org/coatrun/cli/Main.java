package org.coatrun.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.coatrun.cli.command.CoatrunCommand;
import org.coatrun.cli.console.FailureReport;
import org.coatrun.cli.console.Screen;
import org.coatrun.ifcimport.read.IfcImport;
import picocli.CommandLine;

/** Starts the program: wires the streams, runs the command, ends with its exit code. */
public final class Main {

  private Main() {}

  public static void main(String[] args) {
    // The same bytes on every machine, whatever its language.
    Locale.setDefault(Locale.ROOT);
    if (args.length > 1) {
      prepare();
    }
    Screen screen = new Screen(FileDescriptor.out);
    CommandLine command =
        CoatrunCommand.commandLine(printer(screen), printer(new Screen(FileDescriptor.err)));
    int exitCode = run(command, args);
    command.getOut().flush();
    if (exitCode == 0 && screen.failure().isPresent()) {
      exitCode = FailureReport.cutOff(command, screen.failure().get());
    }
    command.getErr().flush();
    System.exit(exitCode);
  }

  /** Almost every command reads a model; what that needs loads while the command line is made. */
  private static void prepare() {
    Thread preparing = new Thread(IfcImport::prepare, "preparing");
    preparing.setDaemon(true);
    preparing.start();
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

  private static PrintWriter printer(Screen screen) {
    return new PrintWriter(new OutputStreamWriter(screen, charset()), false);
  }

  // UTF-8, whatever the machine's locale; but a window of Windows shows only its own code page.
  @SuppressWarnings("SystemConsoleNull")
  private static Charset charset() {
    boolean windows = System.getProperty("os.name").startsWith("Windows");
    Console window = windows ? System.console() : null;
    return window == null ? StandardCharsets.UTF_8 : window.charset();
  }
}
