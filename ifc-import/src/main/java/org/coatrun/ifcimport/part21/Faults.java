package org.coatrun.ifcimport.part21;

import java.util.List;
import org.coatrun.shared.finding.FileFinding;

/** Turns what showed while scanning into findings. */
final class Faults {

  private Faults() {}

  /** Adds them to the log, but for those behind a place where the file ends. */
  static void log(RecordIndex index, long end, FindingLog log, LineCounter lines) {
    for (Chunk c : index.chunks()) {
      c.faults.forEach((code, places) -> log(code, places, end, log));
    }
    duplicates(index, log, lines);
    if (index.find(0) >= 0) {
      log.add(
          FileFinding.ZERO_ID, index.position(index.find(0)), 0, "a record carries the number 0");
    }
  }

  private static void log(FileFinding code, Chunk.Faults places, long end, FindingLog log) {
    for (int i = 0; i < places.count && places.positions[i] < end; i++) {
      log.add(code, places.positions[i], places.ids[i], sentence(code, places.ids[i]));
    }
    if (places.more) {
      log.addMore(code);
    }
  }

  private static String sentence(FileFinding code, long id) {
    String what = id < 0 ? "this statement" : "#" + id;
    return switch (code) {
      case UNTERMINATED_TEXT -> what + ": a text is not closed before the next record begins";
      case MISSING_SEMICOLON -> what + " is not closed by a semicolon";
      default -> what + " has not the form #number=NAME(...)";
    };
  }

  private static void duplicates(RecordIndex index, FindingLog log, LineCounter lines) {
    List<Integer> pairs = index.duplicates();
    for (int i = 0; i < pairs.size(); i += 2) {
      long earlier = index.position(pairs.get(i));
      long later = index.position(pairs.get(i + 1));
      long id = index.id(pairs.get(i));
      String sentence =
          "#%d stands in line %d and again in line %d; the first one is used"
              .formatted(id, lines.lineOf(earlier), lines.lineOf(later));
      log.add(FileFinding.DUPLICATE_ID, later, id, sentence);
    }
    if (index.duplicateCount() > pairs.size() / 2) {
      log.addMore(FileFinding.DUPLICATE_ID);
    }
  }
}
