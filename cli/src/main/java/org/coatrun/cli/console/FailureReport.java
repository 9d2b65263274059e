package org.coatrun.cli.console;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * Turns whatever ends a command into a sentence on the error stream and an exit code.
 *
 * <p>A user's mistake never shows a stack trace. A fault of the program shows one only where the
 * environment variable {@value #TRACE_VARIABLE} is set, so that it can be reported.
 */
public final class FailureReport implements IParameterExceptionHandler, IExecutionExceptionHandler {

  /** Set to anything, it makes a fault of the program show its stack trace. */
  public static final String TRACE_VARIABLE = "COATRUN_TRACE";

  @Override
  public int handleParseException(ParameterException exception, String[] args) {
    CommandLine command = exception.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    say(command, firstLine(exception.getMessage()));
    say(command, "try '" + name + " --help'");
    return ExitCode.USAGE.code();
  }

  @Override
  public int handleExecutionException(
      Exception exception, CommandLine command, ParseResult parseResult) {
    if (exception instanceof CommandFailure failure) {
      say(command, failure.getMessage());
      return failure.exitCode().code();
    }
    return fault(command, exception);
  }

  /** Reports what is no fault of the user, memory that ran out included. */
  public static int fault(CommandLine command, Throwable cause) {
    if (isOutOfMemory(cause)) {
      say(
          command,
          "the memory given is not enough for this model; give more, for example"
              + " COATRUN_OPTS=-Xmx4g");
      return ExitCode.OUT_OF_MEMORY.code();
    }
    say(
        command,
        "the program itself failed ("
            + summary(cause)
            + "); please report this, with "
            + TRACE_VARIABLE
            + "=1 set");
    if (System.getenv(TRACE_VARIABLE) != null) {
      command.getErr().print(trace(cause));
      command.getErr().flush();
    }
    return ExitCode.FAULT.code();
  }

  /** Reports that what was printed is not all there, because of a full disk or the like. */
  public static int cutOff(CommandLine command, IOException cause) {
    say(
        command,
        "cannot write all of the output: " + firstLine(String.valueOf(cause.getMessage())));
    return ExitCode.CANNOT_WRITE.code();
  }

  private static boolean isOutOfMemory(Throwable cause) {
    for (Throwable t = cause; t != null; t = t.getCause()) {
      if (t instanceof OutOfMemoryError) {
        return true;
      }
    }
    return false;
  }

  private static String summary(Throwable cause) {
    String message = cause.getMessage();
    String kind = cause.getClass().getSimpleName();
    return message == null ? kind : kind + ": " + firstLine(message);
  }

  private static String trace(Throwable cause) {
    StringWriter text = new StringWriter();
    cause.printStackTrace(new PrintWriter(text));
    return text.toString();
  }

  private static String firstLine(String message) {
    return message.strip().lines().findFirst().orElse("");
  }

  private static void say(CommandLine command, String sentence) {
    command.getErr().println("coatrun: " + Plain.text(sentence));
    command.getErr().flush();
  }
}
