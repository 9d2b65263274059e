package org.coatrun.ifcimport.part21;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.finding.Finding;

/**
 * Collects findings from any thread, each once. Of each kind the first {@value #MOST} in order are
 * kept, whatever the order in which they come, so the outcome is always the same.
 */
final class FindingLog {

  static final int MOST = 1000;

  private final String file;
  private final Map<FileFinding, TreeSet<Finding>> kept = new TreeMap<>();
  private final TreeSet<FileFinding> more = new TreeSet<>();

  FindingLog(String file) {
    this.file = file;
  }

  synchronized void add(FileFinding code, long line, long step, String sentence) {
    TreeSet<Finding> ofKind = kept.computeIfAbsent(code, c -> new TreeSet<>());
    ofKind.add(new Finding(code, file, line, step, "", sentence));
    if (ofKind.size() > MOST) {
      ofKind.pollLast();
      more.add(code);
    }
  }

  /** Says that some were not even added. */
  synchronized void addMore(FileFinding code) {
    more.add(code);
  }

  /** All findings, sorted. */
  synchronized List<Finding> sorted() {
    List<Finding> all = new ArrayList<>();
    kept.values().forEach(all::addAll);
    for (FileFinding code : more) {
      String sentence = "more than " + MOST + " findings " + code.code() + " in this file";
      all.add(new Finding(FileFinding.MORE_OF_THE_SAME, file, 0, 0, "", sentence));
    }
    all.sort(null);
    return all;
  }
}
