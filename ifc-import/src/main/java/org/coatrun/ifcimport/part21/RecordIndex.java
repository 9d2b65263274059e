package org.coatrun.ifcimport.part21;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.FileFinding;

/** Where each record stands and what it is called; a record is known by its place in the order. */
final class RecordIndex {

  /** More are counted but not kept. */
  static final int MOST_DUPLICATES = FindingLog.MOST;

  private static final int LONG_RECORD = 1 << 16;
  private static final int LONGEST_RECORD = 64 << 20;

  /** Texts that do not end within are left to the full way. */
  static final int FIRST_BYTES = 128;

  private static final int GONE = -1;
  private static final int HINT_SHIFT = 12;
  private static final int[] NOT_PLAIN = {};

  private final Chunk[] chunks;
  private final NameTable nameTable;

  /** Number of the first record of each chunk, and the number of all records behind the last. */
  private final int[] firsts;

  /** The chunk of each 4096th record: where the search for a record's chunk begins. */
  private final int[] hints;

  private final Ids byId;
  private final List<Integer> duplicates = new ArrayList<>();
  private int duplicateCount;
  private int[] groupStarts;
  private int[] grouped;
  private int left;

  RecordIndex(List<Chunk> chunks, NameTable nameTable) {
    this.chunks = chunks.toArray(Chunk[]::new);
    this.nameTable = nameTable;
    firsts = new int[this.chunks.length + 1];
    for (int i = 0; i < this.chunks.length; i++) {
      firsts[i + 1] = Math.addExact(firsts[i], this.chunks[i].count);
    }
    left = firsts[this.chunks.length];
    hints = new int[(left >> HINT_SHIFT) + 1];
    for (int i = 1; i < hints.length; i++) {
      hints[i] = chunkFrom(hints[i - 1], i << HINT_SHIFT);
    }
    byId =
        AscendingIds.areIn(this.chunks)
            ? new AscendingIds(this)
            : IdTable.of(this, this::duplicate);
  }

  private void duplicate(int earlier, int later) {
    remove(later);
    if (duplicates.size() < 2 * MOST_DUPLICATES) {
      duplicates.add(earlier);
      duplicates.add(later);
    }
    duplicateCount++;
  }

  /** The records taken out because another with their id stands: that one's number, then theirs. */
  List<Integer> duplicates() {
    return duplicates;
  }

  /** How many records were taken out as duplicates. */
  int duplicateCount() {
    return duplicateCount;
  }

  /** How many records were scanned, those taken out included. */
  int size() {
    return firsts[chunks.length];
  }

  /** How many records stand. */
  int count() {
    return left;
  }

  /** Takes a record out, because another one with its id stands or it has no place here. */
  void remove(int number) {
    int c = chunkOf(number);
    int i = number - firsts[c];
    left -= chunks[c].names[i] == GONE ? 0 : 1;
    chunks[c].names[i] = GONE;
  }

  long id(int number) {
    int c = chunkOf(number);
    return chunks[c].id(number - firsts[c]);
  }

  long position(int number) {
    int c = chunkOf(number);
    return chunks[c].position(number - firsts[c]);
  }

  /** Where the next record or, for the last of a chunk, the next statement begins. */
  long end(int number) {
    int c = chunkOf(number);
    int i = number - firsts[c] + 1;
    return i < chunks[c].count ? chunks[c].position(i) : chunks[c].next();
  }

  int name(int number) {
    int c = chunkOf(number);
    return chunks[c].names[number - firsts[c]];
  }

  /** A record's first parameter where it is a short text in plain writing; it is not decoded. */
  Optional<String> plainFirstText(int number, ByteSource source) {
    byte[] bytes = new byte[FIRST_BYTES];
    FirstText text = firstText(number, source, bytes);
    return text.isFound() ? Optional.of(text.in(bytes)) : Optional.empty();
  }

  /** Looks for that text in the first bytes of a record, which are read into an array. */
  FirstText firstText(int number, ByteSource source, byte[] bytes) {
    long from = position(number);
    int length = (int) Math.min(bytes.length, end(number) - from);
    source.read(from, bytes, 0, length);
    return FirstText.of(bytes, length, plainHead(bytes, length));
  }

  /** Copies a record as it stands; -1 where it is a complex instance or longer than the array. */
  int written(int number, ByteSource source, byte[] into) {
    int c = chunkOf(number);
    Chunk chunk = chunks[c];
    int inside = number - firsts[c];
    long from = chunk.position(inside);
    long length = (inside + 1 < chunk.count ? chunk.position(inside + 1) : chunk.next()) - from;
    if (length > into.length || chunk.names[inside] <= NameTable.COMPLEX) {
      return -1;
    }
    source.read(from, into, 0, (int) length);
    return (int) length;
  }

  /** Decodes a record. */
  StepRecord decode(int number, ByteSource source, FaultSink faults) {
    int c = chunkOf(number);
    Chunk chunk = chunks[c];
    int inside = number - firsts[c];
    long from = chunk.position(inside);
    long length = (inside + 1 < chunk.count ? chunk.position(inside + 1) : chunk.next()) - from;
    if (length > LONG_RECORD) { // much of it may be white space or a comment behind the record
      length = new StatementScanner(source, nameTable, LONG_RECORD).endOf(from) - from;
    }
    if (length > LONGEST_RECORD) {
      faults.fault(
          FileFinding.BAD_RECORD, "the record is longer than " + LONGEST_RECORD + " bytes");
      return StepRecord.simple(id(number), nameTable.name(name(number)), List.of());
    }
    byte[] bytes = new byte[(int) length];
    source.read(from, bytes, 0, bytes.length);
    int open = chunk.names[inside] > NameTable.COMPLEX ? plainHead(bytes, bytes.length) : -1;
    int[] starts = open < 0 ? NOT_PLAIN : PlainRecord.starts(bytes, open);
    return starts.length == 0
        ? RecordParser.afterHead(bytes, faults).record(chunk.id(inside))
        : StepRecord.plain(chunk.id(inside), nameTable.name(chunk.names[inside]), bytes, starts);
  }

  /** The place of the parenthesis in {@code #1=NAME(}; -1 where the head has another form. */
  private static int plainHead(byte[] bytes, int length) {
    int i = 1;
    while (i < length && Ascii.isDigit(bytes[i])) {
      i++;
    }
    if (i + 1 >= length || bytes[i] != '=' || !Ascii.isNameStart(bytes[i + 1])) {
      return -1;
    }
    i++;
    while (i < length && Ascii.isName(bytes[i])) {
      i++;
    }
    return i < length && bytes[i] == '(' ? i : -1;
  }

  /** Gives a complex instance its name. */
  void rename(int number, int name) {
    int c = chunkOf(number);
    chunks[c].names[number - firsts[c]] = name;
  }

  /** The number of the record with an id, or -1. */
  int find(long id) {
    int number = byId.find(id);
    return number < 0 || name(number) == GONE ? -1 : number;
  }

  Chunk[] chunks() {
    return chunks;
  }

  int first(int chunk) {
    return firsts[chunk];
  }

  /** The ids of the records of one name, in the file's order. */
  long[] idsOf(int name) {
    group();
    if (name + 1 >= groupStarts.length) {
      return new long[0];
    }
    int from = groupStarts[name];
    long[] ids = new long[groupStarts[name + 1] - from];
    int c = 0;
    for (int i = 0; i < ids.length; i++) {
      int number = grouped[from + i]; // ascending, so that the chunks come in order
      c = chunkFrom(Math.max(c, hints[number >> HINT_SHIFT]), number);
      ids[i] = chunks[c].id(number - firsts[c]);
    }
    return ids;
  }

  private int chunkOf(int number) {
    return chunkFrom(hints[number >> HINT_SHIFT], number);
  }

  /** The chunk that holds a record, not before another chunk; those without a record are passed. */
  private int chunkFrom(int chunk, int number) {
    int i = chunk;
    while (i + 1 < chunks.length && firsts[i + 1] <= number) {
      i++;
    }
    return i;
  }

  /** Sorts the records by name, once, by counting; from then on none may be given another name. */
  synchronized void group() {
    if (grouped != null) {
      return;
    }
    int[] starts = new int[nameTable.size() + 2];
    for (Chunk c : chunks) {
      for (int i = 0; i < c.count; i++) {
        starts[c.names[i] + 2]++;
      }
    }
    starts[1] = 0;
    for (int i = 2; i < starts.length; i++) {
      starts[i] += starts[i - 1];
    }
    int[] sorted = new int[left];
    for (int k = 0; k < chunks.length; k++) {
      Chunk c = chunks[k];
      for (int i = 0; i < c.count; i++) {
        if (c.names[i] != GONE) {
          sorted[starts[c.names[i] + 1]++] = firsts[k] + i;
        }
      }
    }
    groupStarts = starts;
    grouped = sorted;
  }

  /** Whether any record carries a name. */
  boolean isUsed(int name) {
    group();
    return name + 1 < groupStarts.length && groupStarts[name + 1] > groupStarts[name];
  }
}
