package org.coatrun.ifcimport.read;

/** Hears how far a long reading has come. Called from the reading thread only. */
@FunctionalInterface
public interface ProgressListener {

  /**
   * A step was taken.
   *
   * @param what what is being done, in a few plain words
   * @param done how much of it is done
   * @param total how much there is in all; 0 where that is not known
   */
  void step(String what, long done, long total);

  /** Hears nothing. */
  static ProgressListener silent() {
    return (what, done, total) -> {};
  }
}
