package org.coatrun.shared.yaml;

/**
 * A job file, listing or field sheet that cannot be used; the message is one sentence for the user.
 */
public final class JobFileException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final String key;
  private final String sentence;

  /**
   * @param file name of the file, as the user gave it
   * @param line from 1, or 0 where no line can be named
   * @param key dotted path of the key, or empty
   * @param sentence what is wrong and what to do
   */
  public JobFileException(String file, int line, String key, String sentence) {
    super(where(file, line, key) + sentence);
    this.file = file;
    this.line = line;
    this.key = key;
    this.sentence = sentence;
  }

  /** Name of the file, as the user gave it. */
  public String file() {
    return file;
  }

  /** Line from 1, or 0 where no line can be named. */
  public int line() {
    return line;
  }

  /** Dotted path of the key, or empty. */
  public String key() {
    return key;
  }

  /** What is wrong and what to do, without the place. */
  public String sentence() {
    return sentence;
  }

  private static String where(String file, int line, String key) {
    String at = line > 0 ? file + " line " + line : file;
    return key.isEmpty() ? at + ": " : at + ", " + key + ": ";
  }
}
