package org.coatrun.geometry.surface;

/** Hears how far measuring has come; may be called from several threads. */
@FunctionalInterface
public interface Progress {

  /** So many of all elements are done. */
  void step(long done, long total);

  /** Hears nothing. */
  static Progress silent() {
    return (done, total) -> {};
  }
}
