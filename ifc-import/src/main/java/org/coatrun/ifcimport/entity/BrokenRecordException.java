package org.coatrun.ifcimport.entity;

/**
 * A record is missing, makes no sense or is of a kind that is not handled. Caught at the element
 * that needs it; never reaches the user as such.
 */
public final class BrokenRecordException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final long step;
  private final String kind;
  private final String reason;
  private final boolean dangling;

  /**
   * With what is wrong.
   *
   * @param step number of the record
   * @param kind name of its entity, or empty
   * @param reason what is wrong with it, without its number
   */
  public BrokenRecordException(long step, String kind, String reason) {
    this(step, kind, reason, reason, false);
  }

  private BrokenRecordException(
      long step, String kind, String reason, String inFull, boolean dangling) {
    super("#" + step + (kind.isEmpty() ? "" : " " + kind) + ": " + inFull);
    this.step = step;
    this.kind = kind;
    this.reason = reason;
    this.dangling = dangling;
  }

  /** A record that refers to one that the file does not have. */
  static BrokenRecordException dangling(long step, String kind, String attribute, long missing) {
    return new BrokenRecordException(
        step,
        kind,
        attribute + " refers to a record that there is not",
        attribute + " refers to #" + missing + ", which no record carries",
        true);
  }

  public long step() {
    return step;
  }

  public String kind() {
    return kind;
  }

  /** Whether the record itself may be whole, but refers to one that there is not. */
  public boolean isDangling() {
    return dangling;
  }

  /** What is wrong, without any number of a record: alike for all that is written alike. */
  public String words() {
    return kind.isEmpty() ? reason : kind + ": " + reason;
  }
}
