package org.coatrun.shared.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Which element: the file it stands in and its instance number there. GlobalIds may be doubled or
 * ill-formed, so they do not serve as keys.
 *
 * @param file index into {@link Building#files()}
 * @param step instance number (#n) in that file
 */
public record ElementId(int file, long step) implements Comparable<ElementId> {

  /** Values by element, in the order of the elements; cannot be changed. */
  public static <V> Map<ElementId, V> sorted(Map<ElementId, V> values) {
    Map<ElementId, V> sorted = new LinkedHashMap<>(values.size() * 2);
    values.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(e -> sorted.put(e.getKey(), e.getValue()));
    return Collections.unmodifiableMap(sorted);
  }

  // Written out: see the conventions in DEVELOPERS.md.
  @Override
  public boolean equals(Object o) {
    return o instanceof ElementId other && step == other.step && file == other.file;
  }

  @Override
  public int hashCode() {
    return 31 * file + Long.hashCode(step);
  }

  @Override
  public int compareTo(ElementId o) {
    return file != o.file ? Integer.compare(file, o.file) : Long.compare(step, o.step);
  }
}
