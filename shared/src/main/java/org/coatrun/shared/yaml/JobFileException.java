package org.coatrun.shared.yaml;

/**
 * A job file, listing or field sheet that cannot be used; the message is one sentence for the user.
 */
public final class JobFileException extends RuntimeException {

  private static final long serialVersionUID = 1L;
  private static final int LONGEST_KEY = 150;
  private static final int LONGEST_SENTENCE = 700;

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
    super(where(file, line, shortened(key, LONGEST_KEY)) + shortened(sentence, LONGEST_SENTENCE));
    this.file = file;
    this.line = line;
    this.key = shortened(key, LONGEST_KEY);
    this.sentence = shortened(sentence, LONGEST_SENTENCE);
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

  /** What the file holds may stand in it; beginning and end say enough. */
  private static String shortened(String text, int longest) {
    int half = longest / 2;
    return text.length() <= longest
        ? text
        : text.substring(0, half) + " ... " + text.substring(text.length() - half);
  }

  private static String where(String file, int line, String key) {
    String at = line > 0 ? file + " line " + line : file;
    return key.isEmpty() ? at + ": " : at + ", " + key + ": ";
  }
}
