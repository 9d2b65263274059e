package org.coatrun.ifcimport.part21;

/** A model file cannot be used; the message is one clear sentence for the user. */
public final class ModelFileException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** With the sentence to show: what, where, and what to do. */
  public ModelFileException(String sentence) {
    super(sentence);
  }

  /** With the sentence to show, and the cause for those who look further. */
  public ModelFileException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
