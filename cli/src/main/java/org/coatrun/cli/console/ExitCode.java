package org.coatrun.cli.console;

/** How the program ends. The numbers are part of its interface and never change their meaning. */
public enum ExitCode {
  OK(0, "Done."),
  FAULT(1, "The program itself failed, or was ended early. Nothing was written."),
  USAGE(2, "The command line was not understood. Nothing was read or written."),
  BAD_INPUT(3, "An input file is missing, cannot be used, or is cut off. Nothing was written."),
  CANNOT_WRITE(4, "The results could not be written. What stood there before still stands."),
  PARTIAL(
      5,
      "Done, but not in full: a cut-off model was accepted with --accept-truncated, or --strict was"
          + " given and an element is unresolved."),
  OUT_OF_MEMORY(6, "The memory given was not enough. Nothing was written.");

  private final int code;
  private final String meaning;

  ExitCode(int code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  /** The number that the shell sees. */
  public int code() {
    return code;
  }

  /** What it means, in a sentence. */
  public String meaning() {
    return meaning;
  }
}
