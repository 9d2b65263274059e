package org.coatrun.ifcimport.part21;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coatrun.shared.finding.FileFinding;

/** Reads the statements that are no records: section marks and header lines. */
final class Sections {

  private static final int KEYWORD = 60;
  private static final int LONGEST_HEADER_LINE = 1 << 20;

  /** What the place behind a section mark belongs to. */
  private enum Part {
    NONE,
    HEADER,
    DATA,
    /**
     * Anchors, references and signatures of the third edition, which building models do not use.
     */
    OTHER
  }

  private final ByteSource source;
  private final FindingLog log;
  private final List<StepRecord> headerLines = new ArrayList<>();
  private Part part = Part.NONE;
  private boolean sawHeader;
  private boolean sawData;
  private long endMark = -1;
  private long openSection = -1;

  Sections(ByteSource source, FindingLog log) {
    this.source = source;
    this.log = log;
  }

  /** Takes the next statement in the file's order. */
  void statement(long at) {
    String keyword = keyword(at);
    if (endMark >= 0) {
      log.add(FileFinding.AFTER_END, at, 0, "text stands behind the end mark");
      return;
    }
    switch (keyword) {
      case "ISO-10303-21" -> {}
      case "HEADER" -> {
        enter(Part.HEADER, at);
        sawHeader = true;
      }
      case "DATA" -> {
        enter(Part.DATA, at);
        sawData = true;
      }
      case "ANCHOR", "REFERENCE", "SIGNATURE" -> enter(Part.OTHER, at);
      case "ENDSEC" -> part = Part.NONE;
      case "END-ISO-10303-21" -> end(at);
      default -> plain(at, keyword);
    }
  }

  private void enter(Part next, long at) {
    if (part != Part.NONE) {
      log.add(FileFinding.OPEN_SECTION, at, 0, "the section before this line has no ENDSEC");
    }
    part = next;
    openSection = at;
  }

  private void end(long at) {
    endMark = at;
    if (part != Part.NONE) {
      log.add(FileFinding.OPEN_SECTION, openSection, 0, "this section has no ENDSEC");
    }
  }

  private void plain(long at, String keyword) {
    boolean named = !keyword.isEmpty() && Ascii.isNameStart(keyword.charAt(0));
    if (!sawData && named && part != Part.OTHER) {
      headerLine(at);
    } else if (part != Part.OTHER) {
      byte[] bytes = read(at, KEYWORD);
      int end = Excerpt.lineEnd(bytes, 0, bytes.length);
      log.add(FileFinding.STRAY_TEXT, at, 0, Excerpt.quoted(bytes, 0, end) + " is no record");
    }
  }

  private void headerLine(long at) {
    byte[] bytes = read(at, LONGEST_HEADER_LINE);
    FaultSink faults =
        (code, sentence) -> log.add(FileFinding.BAD_HEADER, at, 0, "header: " + sentence);
    StepRecord line = new RecordParser(bytes, 0, bytes.length, faults).record(0);
    headerLines.add(line);
    HeaderLines.check(line).ifPresent(s -> log.add(FileFinding.BAD_HEADER, at, 0, s));
  }

  /** The word that a statement begins with, upper case. */
  private String keyword(long at) {
    StringBuilder word = new StringBuilder();
    for (byte c : read(at, KEYWORD)) {
      if (!Ascii.isName(c & 0xff) && c != '-' && c != '!') {
        break;
      }
      word.append((char) c);
    }
    return word.toString().toUpperCase(Locale.ROOT);
  }

  private byte[] read(long at, int most) {
    byte[] bytes = new byte[(int) Math.min(most, source.size() - at)];
    source.read(at, bytes, 0, bytes.length);
    return bytes;
  }

  /** Whether there was anything of an exchange structure's own. */
  boolean sawAny() {
    return sawHeader
        || sawData
        || endMark >= 0
        || headerLines.stream().anyMatch(HeaderLines::isKnown);
  }

  /** Where the end mark stands, or -1. */
  long endMark() {
    return endMark;
  }

  /** What the header says; what it lacks becomes a finding. */
  Header header() {
    if (!sawHeader) {
      log.add(FileFinding.BAD_HEADER, FindingLog.NOWHERE, 0, "the mark HEADER is missing");
    }
    if (!sawData) {
      log.add(FileFinding.BAD_HEADER, FindingLog.NOWHERE, 0, "the mark DATA is missing");
    }
    return HeaderLines.header(
        headerLines, s -> log.add(FileFinding.BAD_HEADER, FindingLog.NOWHERE, 0, s));
  }
}
