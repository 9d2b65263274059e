package org.coatrun.ifcimport.part21;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.finding.FileFinding;

/** Reads the statements that are no records: section marks and header lines. */
final class Sections {

  private static final int KEYWORD = 40;
  private static final int LONGEST_HEADER_LINE = 1 << 20;

  private final ByteSource source;
  private final FindingLog log;
  private final LineCounter lines;

  private final List<StepRecord> headerLines = new ArrayList<>();
  private boolean inHeader;
  private boolean inData;
  private boolean inOther;
  private boolean sawHeader;
  private boolean sawData;
  private long endMark = -1;

  Sections(ByteSource source, FindingLog log, LineCounter lines) {
    this.source = source;
    this.log = log;
    this.lines = lines;
  }

  /** Takes the next statement in the file's order. */
  void statement(long at) {
    if (endMark >= 0) {
      return;
    }
    String keyword = keyword(at);
    switch (keyword) {
      case "ISO-10303-21":
        break;
      case "HEADER":
        enter(true, false, false);
        sawHeader = true;
        break;
      case "DATA":
        enter(false, true, false);
        sawData = true;
        break;
      case "ENDSEC":
        enter(false, false, false);
        break;
      case "ANCHOR", "REFERENCE", "SIGNATURE":
        enter(false, false, true);
        break;
      case "END-ISO-10303-21":
        endMark = at;
        break;
      default:
        plain(at, keyword);
    }
  }

  private void enter(boolean header, boolean data, boolean other) {
    inHeader = header;
    inData = data;
    inOther = other;
  }

  private void plain(long at, String keyword) {
    if (!inData && !sawData && !inOther && Ascii.isNameStart(first(keyword))) {
      headerLine(at);
    } else if (!inOther) {
      stray(at);
    }
  }

  private static int first(String keyword) {
    return keyword.isEmpty() ? -1 : keyword.charAt(0);
  }

  private void stray(long at) {
    byte[] bytes = read(at, KEYWORD);
    int end = 0;
    while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
      end++;
    }
    String text = Excerpt.of(bytes, 0, end);
    log.add(FileFinding.STRAY_TEXT, lines.lineOf(at), 0, "\"" + text + "\" is no record");
  }

  private void headerLine(long at) {
    byte[] bytes = read(at, LONGEST_HEADER_LINE);
    long line = lines.lineOf(at);
    FaultSink faults =
        (code, sentence) -> log.add(FileFinding.BAD_HEADER, line, 0, "header: " + sentence);
    headerLines.add(new RecordParser(bytes, 0, bytes.length, faults).record(0));
    if (!inHeader) {
      log.add(FileFinding.BAD_HEADER, line, 0, "a header line stands outside the header section");
    }
  }

  /** The word that a statement begins with, upper case. */
  String keyword(long at) {
    byte[] bytes = read(at, KEYWORD);
    StringBuilder word = new StringBuilder();
    for (byte c : bytes) {
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

  boolean sawHeader() {
    return sawHeader || !headerLines.isEmpty();
  }

  boolean sawData() {
    return sawData;
  }

  /** Whether the last section mark opened a section that was not closed. */
  boolean isOpen() {
    return inHeader || inData || inOther;
  }

  /** Where the end mark stands, or -1. */
  long endMark() {
    return endMark;
  }

  Header header() {
    List<Value> description = line("FILE_DESCRIPTION");
    List<Value> name = line("FILE_NAME");
    List<Value> schema = line("FILE_SCHEMA");
    return new Header(
        texts(description, 0),
        text(name, 0),
        text(name, 1),
        texts(name, 2),
        texts(name, 3),
        text(name, 4),
        text(name, 5),
        text(name, 6),
        texts(schema, 0));
  }

  private List<Value> line(String keyword) {
    Optional<StepRecord> found =
        headerLines.stream().filter(r -> r.name().equals(keyword)).findFirst();
    if (found.isEmpty()) {
      log.add(FileFinding.BAD_HEADER, 0, 0, "the header has no line " + keyword);
    }
    return found.map(StepRecord::values).orElse(List.of());
  }

  private static String text(List<Value> values, int i) {
    return i < values.size() ? values.get(i).asText().orElse("") : "";
  }

  /** A list of texts; a single text without parentheses counts as a list of one. */
  private static List<String> texts(List<Value> values, int i) {
    if (i >= values.size()) {
      return List.of();
    }
    Value v = values.get(i);
    List<Value> items = v.isList() ? v.items() : List.of(v);
    return items.stream().flatMap(t -> t.asText().stream()).toList();
  }
}
