package org.coatrun.ifcimport.entity;

/**
 * A record is missing, makes no sense or is of a kind that is not handled. Caught at the element
 * that needs it; never reaches the user as such.
 */
public final class BrokenRecordException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final long step;
  private final String kind;

  /**
   * With what is wrong.
   *
   * @param step number of the record
   * @param kind name of its entity, or empty
   * @param reason what is wrong with it, without its number
   */
  public BrokenRecordException(long step, String kind, String reason) {
    super("#" + step + (kind.isEmpty() ? "" : " " + kind) + ": " + reason);
    this.step = step;
    this.kind = kind;
  }

  public long step() {
    return step;
  }

  public String kind() {
    return kind;
  }
}
