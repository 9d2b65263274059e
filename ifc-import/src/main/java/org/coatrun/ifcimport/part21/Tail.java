package org.coatrun.ifcimport.part21;

import java.util.List;
import org.coatrun.shared.finding.FileFinding;

/** Judges the end of a file: whole, cut off, or with something behind its end mark. */
final class Tail {

  private final String name;
  private final RecordIndex index;
  private final List<Chunk> chunks;
  private final long endMark;
  private final FindingLog log;
  private final LineCounter lines;

  Tail(
      String name,
      RecordIndex index,
      List<Chunk> chunks,
      long endMark,
      FindingLog log,
      LineCounter lines) {
    this.name = name;
    this.index = index;
    this.chunks = chunks;
    this.endMark = endMark;
    this.log = log;
    this.lines = lines;
  }

  /**
   * Takes out what does not count.
   *
   * @throws ModelFileException where the file is cut off and that is not accepted
   */
  void judge(boolean acceptTruncated) {
    if (endMark >= 0) {
      removeBehind(endMark);
    } else if (acceptTruncated) {
      log.add(FileFinding.TRUNCATED, cutAt(), 0, where());
      removeCut();
    } else {
      throw new ModelFileException(
          name
              + " is truncated: "
              + where()
              + "; export or copy the model again, or accept a partial model.");
    }
  }

  private long open() {
    return chunks.isEmpty() ? -1 : chunks.get(chunks.size() - 1).open();
  }

  /** Where the last statement begins that is not whole, or the last place of the file. */
  private long cutAt() {
    return open() >= 0 ? open() : size() - 1;
  }

  private long size() {
    return chunks.isEmpty() ? 1 : chunks.get(chunks.size() - 1).next();
  }

  private String where() {
    String line = String.valueOf(lines.lineOf(cutAt()));
    return open() >= 0
        ? "what begins in line " + line + " is not finished"
        : "it stops behind line " + line + " without the end mark END-ISO-10303-21";
  }

  private void removeCut() {
    int last = index.size() - 1;
    if (last >= 0 && index.position(last) == open()) {
      index.remove(last);
    }
  }

  private void removeBehind(long mark) {
    int number = index.size() - 1;
    while (number >= 0 && index.position(number) > mark) {
      index.remove(number--);
    }
    int gone = index.size() - 1 - number;
    if (gone > 0) {
      long at = index.position(number + 1);
      log.add(FileFinding.AFTER_END, at, 0, gone + " records stand behind the end mark");
    }
  }
}
