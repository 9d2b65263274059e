package org.coatrun.shared.model;

/**
 * Which element: the file it stands in and its instance number there. GlobalIds may be doubled or
 * ill-formed, so they do not serve as keys.
 *
 * @param file index into {@link Building#files()}
 * @param step instance number (#n) in that file
 */
public record ElementId(int file, long step) implements Comparable<ElementId> {

  @Override
  public int compareTo(ElementId o) {
    return file != o.file ? Integer.compare(file, o.file) : Long.compare(step, o.step);
  }
}
