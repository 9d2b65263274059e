package org.coatrun.ifcimport.part21;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.finding.Finding;

/**
 * Collects faults from any thread, each once. Of each kind the first {@value #MOST} of the file are
 * kept, whatever the order in which they come, so the outcome is always the same. Lines are counted
 * only for what is kept.
 */
final class FindingLog {

  static final int MOST = 1000;

  /** Position of a fault that concerns the whole file. */
  static final long NOWHERE = -1;

  private static final Comparator<Place> ORDER =
      Comparator.comparingLong(Place::position)
          .thenComparingLong(Place::step)
          .thenComparing(Place::sentence);

  private final String file;
  private final LineCounter lines;
  private final Map<FileFinding, TreeSet<Place>> kept = new EnumMap<>(FileFinding.class);
  private final Set<FileFinding> more = EnumSet.noneOf(FileFinding.class);

  private record Place(long position, long step, String sentence) {}

  FindingLog(String file, LineCounter lines) {
    this.file = file;
    this.lines = lines;
  }

  /** Adds a fault; {@code step} is the record's id, or anything below 0 for none. */
  synchronized void add(FileFinding code, long position, long step, String sentence) {
    TreeSet<Place> ofKind = kept.computeIfAbsent(code, c -> new TreeSet<>(ORDER));
    ofKind.add(new Place(position, Math.max(0, step), sentence));
    if (ofKind.size() > MOST) {
      ofKind.pollLast();
      more.add(code);
    }
  }

  /** Says that there were more of a kind than were added. */
  synchronized void addMore(FileFinding code) {
    more.add(code);
  }

  /** All findings, sorted. */
  synchronized List<Finding> sorted() {
    List<Finding> all = new ArrayList<>();
    kept.forEach((code, places) -> places.forEach(p -> all.add(finding(code, p))));
    for (FileFinding code : more) {
      String sentence = "more than " + MOST + " findings " + code.code() + " in this file";
      all.add(finding(FileFinding.MORE_OF_THE_SAME, new Place(NOWHERE, 0, sentence)));
    }
    all.sort(null);
    return all;
  }

  private Finding finding(FileFinding code, Place p) {
    long line = p.position < 0 ? 0 : lines.lineOf(p.position);
    return new Finding(code, file, line, p.step, "", p.sentence);
  }
}
