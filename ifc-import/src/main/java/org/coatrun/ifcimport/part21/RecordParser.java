package org.coatrun.ifcimport.part21;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coatrun.shared.finding.FileFinding;

/**
 * Decodes the parameters of one record from its bytes.
 *
 * <p>A parameter that cannot be read becomes {@link Value.Faulty} and keeps its place; a list that
 * is not closed ends at the semicolon. Nesting deeper than {@value #DEEPEST} is a fault.
 */
final class RecordParser {

  /** Building models nest three deep. */
  static final int DEEPEST = 64;

  /** A record with more faults is noise, and must not fill the memory with them. */
  private static final int MOST_FAULTS = 100;

  private static final Value OMITTED = new Value.Omitted();
  private static final Value DERIVED = new Value.Derived();

  private final byte[] bytes;
  private final int end;
  private final FaultSink faults;
  private int faultCount;
  private int pos;

  /** For what begins at {@code start}; nothing at or behind {@code end} is looked at. */
  RecordParser(byte[] bytes, int start, int end, FaultSink faults) {
    this.bytes = bytes;
    this.pos = start;
    this.end = end;
    this.faults = faults;
  }

  /** For the bytes of a record with its head {@code #id=}, which the scanner has seen. */
  static RecordParser afterHead(byte[] bytes, FaultSink faults) {
    RecordParser parser = new RecordParser(bytes, 0, bytes.length, faults);
    parser.skipHead();
    return parser;
  }

  /** The parameter that begins at a place of a plain record. */
  static Value plainValue(byte[] bytes, int start, int end) {
    return switch (bytes[start]) {
      case '#' -> new Value.Ref(plainReference(bytes, start + 1));
      case '$' -> OMITTED;
      case '*' -> DERIVED;
      default -> new RecordParser(bytes, start, end, FaultSink.NONE).value(0);
    };
  }

  /** The number that begins at a place of a plain record: of few digits, with something behind. */
  static long plainReference(byte[] bytes, int from) {
    long id = 0;
    for (int i = from; Ascii.isDigit(bytes[i]); i++) {
      id = id * 10 + (bytes[i] - '0');
    }
    return id;
  }

  private void skipHead() {
    while (pos < end && bytes[pos] != '=') {
      pos = Math.max(pos + 1, Blanks.skip(bytes, pos, end));
    }
    pos++;
  }

  /** Decodes {@code NAME(...)} or {@code (A(...)B(...))}, whose head the scanner has seen. */
  StepRecord record(long id) {
    skipBlank();
    StepRecord record = peek() == '(' ? complex(id) : simple(id);
    skipBlank();
    if (pos < end && peek() != ';') {
      faults.fault(
          FileFinding.STRAY_TEXT,
          Excerpt.quoted(bytes, pos, Excerpt.lineEnd(bytes, pos, end))
              + " stands behind the last parenthesis");
    }
    return record;
  }

  private StepRecord simple(long id) {
    String name = name();
    skipBlank();
    if (peek() != '(') {
      faults.fault(FileFinding.BAD_RECORD, "no parameters stand behind the name " + name);
      return StepRecord.simple(id, name, List.of());
    }
    pos++;
    return StepRecord.simple(id, name, list(0));
  }

  private StepRecord complex(long id) {
    pos++;
    List<StepRecord> parts = new ArrayList<>();
    skipBlank();
    while (Ascii.isNameStart(peek())) {
      parts.add(simple(id));
      skipBlank();
    }
    if (peek() == ')') {
      pos++;
    } else {
      faults.fault(FileFinding.BAD_RECORD, "a complex record is not closed");
    }
    return StepRecord.complex(id, parts);
  }

  private String name() {
    int start = pos;
    while (pos < end && (Ascii.isName(bytes[pos] & 0xff) || pos == start)) {
      pos++;
    }
    return new String(bytes, start, pos - start, StandardCharsets.ISO_8859_1)
        .toUpperCase(Locale.ROOT);
  }

  /** The members of a list whose opening parenthesis has been read, and its closing one. */
  private List<Value> list(int depth) {
    List<Value> values = new ArrayList<>();
    skipBlank();
    if (peek() == ')') {
      pos++;
      return values;
    }
    while (true) {
      values.add(member(depth));
      int c = peek();
      if (c == ',') {
        pos++;
      } else if (c == ')') {
        pos++;
        return values;
      } else {
        faults.fault(FileFinding.BAD_RECORD, "a parenthesis is not closed");
        return values;
      }
    }
  }

  /** One member of a list, up to the comma or parenthesis behind it. */
  private Value member(int depth) {
    skipBlank();
    int start = pos;
    Value value = value(depth);
    skipBlank();
    int c = peek();
    if (c == ',' || c == ')' || c == ';' || c < 0) {
      return value;
    }
    skipRest();
    return faulty(start, "not a value");
  }

  private Value value(int depth) {
    int c = peek();
    switch (c) {
      case '#':
        return reference();
      case '\'':
        return text();
      case '"':
        return binary();
      case '$':
        pos++;
        return OMITTED;
      case '*':
        pos++;
        return DERIVED;
      case '(':
        return nested(depth);
      case '.':
        return pos + 1 < end && Ascii.isNameStart(bytes[pos + 1]) ? item() : number();
      case ',', ')', ';', -1:
        return faulty(pos, "nothing stands between two commas");
      default:
        return Ascii.isNameStart(c) ? typed(depth) : number();
    }
  }

  private Value nested(int depth) {
    int start = pos;
    if (depth >= DEEPEST) {
      skipRest();
      return faulty(start, "nested too deep");
    }
    pos++;
    return new Value.ListOf(list(depth + 1));
  }

  private Value reference() {
    int start = pos++;
    long id = 0;
    while (pos < end && Ascii.isDigit(bytes[pos])) {
      if (id > (Long.MAX_VALUE - 9) / 10) {
        skipRest();
        return faulty(start, "a number too large for a reference");
      }
      id = id * 10 + (bytes[pos++] - '0');
    }
    return pos == start + 1 ? faulty(start, "a reference without a number") : new Value.Ref(id);
  }

  private Value text() {
    int start = ++pos;
    int close = Quotes.close(bytes, start, end);
    if (close < 0) {
      pos = end;
      String text = Excerpt.of(bytes, start, end);
      faults.fault(FileFinding.UNTERMINATED_TEXT, "the text \"" + text + "\" is not closed");
      return new Value.Faulty(text, "a text that is not closed");
    }
    pos = close + 1;
    return new Value.Text(TextDecoder.decode(bytes, start, close, faults));
  }

  private Value binary() {
    int start = pos++;
    int from = pos;
    while (pos < end && bytes[pos] >= 0 && Ascii.hex(bytes[pos]) >= 0) {
      pos++;
    }
    if (peek() != '"') {
      skipRest();
      return faulty(start, "not a binary");
    }
    pos++;
    return new Value.Binary(
        new String(bytes, from, pos - 1 - from, StandardCharsets.ISO_8859_1)
            .toUpperCase(Locale.ROOT));
  }

  private Value item() {
    int start = pos++;
    String item = name();
    if (peek() != '.') {
      skipRest();
      return faulty(start, "an enumeration item that is not closed");
    }
    pos++;
    return new Value.Enum(item);
  }

  private Value typed(int depth) {
    int start = pos;
    String name = name();
    skipBlank();
    if (peek() != '(') {
      pos = start;
      return number(); // NAN, INF and the like, or no value at all
    }
    if (depth >= DEEPEST) {
      skipRest();
      return faulty(start, "nested too deep");
    }
    pos++;
    List<Value> inner = list(depth + 1);
    return inner.size() == 1
        ? new Value.Typed(name, inner.get(0))
        : faulty(start, "a type with " + inner.size() + " values instead of one");
  }

  private Value number() {
    int start = pos;
    while (pos < end && !endsNumber(bytes[pos])) {
      pos++;
    }
    if (pos == start) {
      pos++;
    }
    Value value = Numbers.parse(bytes, start, pos, faults);
    return value instanceof Value.Faulty faulty ? counted(faulty) : value;
  }

  private static boolean endsNumber(byte c) {
    return c == ','
        || c == ')'
        || c == '('
        || c == ';'
        || c == '/'
        || c == '\''
        || (c >= 0 && c <= ' ');
  }

  private Value faulty(int start, String reason) {
    String text = Excerpt.of(bytes, start, pos);
    String sentence = text.isEmpty() ? reason : "\"" + text + "\" is " + reason;
    faults.fault(FileFinding.BAD_VALUE, sentence);
    return counted(new Value.Faulty(text, reason));
  }

  private Value counted(Value.Faulty faulty) {
    if (++faultCount > MOST_FAULTS) {
      faults.fault(FileFinding.BAD_RECORD, "too many faults; the rest of the record is left out");
      pos = end;
    }
    return faulty;
  }

  /** Moves to the comma, parenthesis or semicolon that ends the present member. */
  private void skipRest() {
    int open = 0;
    while (pos < end) {
      int c = bytes[pos];
      if (c == ';' || (open == 0 && (c == ',' || c == ')'))) {
        return;
      }
      if (c == '\'') {
        int close = Quotes.close(bytes, pos + 1, end);
        pos = close < 0 ? end : close + 1;
      } else {
        open += c == '(' ? 1 : c == ')' ? -1 : 0;
        pos++;
      }
    }
  }

  private int peek() {
    return pos < end ? bytes[pos] & 0xff : -1;
  }

  private void skipBlank() {
    pos = Blanks.skip(bytes, pos, end);
  }
}
