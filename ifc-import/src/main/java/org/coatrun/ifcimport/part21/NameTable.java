package org.coatrun.ifcimport.part21;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Entity names as small numbers, upper and lower case alike; shared by the scanning threads.
 *
 * <p>Looking up a known name takes no lock: entries are immutable and are only ever added, so a
 * stale view merely leads to the locked path. The numbers depend on which thread came first and
 * must not leave the package.
 */
final class NameTable {

  /** The number of a complex instance, whose name is known only when it is decoded. */
  static final int COMPLEX = 0;

  /** Unforeseeable, so that no file can be made whose names all share a slot. */
  private final int factor = new SplittableRandom().nextInt() | 1;

  private final List<String> names = new ArrayList<>(List.of(""));
  private volatile Entry[] entries = new Entry[1024];

  private record Entry(byte[] upper, int hash, int code) {

    boolean is(byte[] bytes, int from, int to, int otherHash) {
      if (hash != otherHash || upper.length != to - from) {
        return false;
      }
      for (int i = 0; i < upper.length; i++) {
        if (Ascii.upper(bytes[from + i]) != upper[i]) {
          return false;
        }
      }
      return true;
    }
  }

  /** The number of the name in {@code bytes[from, to)}, a new one if need be. */
  int code(byte[] bytes, int from, int to) {
    int hash = 0;
    for (int i = from; i < to; i++) {
      hash = hash * factor + (bytes[i] & 0xdf); // without the bit that tells lower from upper case
    }
    hash ^= hash >>> 16;
    Entry[] table = entries;
    int slot = hash & (table.length - 1);
    for (Entry e = table[slot]; e != null; e = table[slot]) {
      if (e.is(bytes, from, to, hash)) {
        return e.code;
      }
      slot = (slot + 1) & (table.length - 1);
    }
    return add(bytes, from, to, hash);
  }

  private synchronized int add(byte[] bytes, int from, int to, int hash) {
    byte[] upper = new byte[to - from];
    for (int i = 0; i < upper.length; i++) {
      upper[i] = Ascii.upper(bytes[from + i]);
    }
    Entry found = place(entries, new Entry(upper, hash, names.size()));
    if (found.code == names.size()) {
      names.add(new String(upper, StandardCharsets.ISO_8859_1));
      if (names.size() * 2 > entries.length) {
        grow();
      }
    }
    return found.code;
  }

  private void grow() {
    Entry[] larger = new Entry[entries.length * 2];
    for (Entry e : entries) {
      if (e != null) {
        place(larger, e);
      }
    }
    entries = larger;
  }

  /** Puts an entry in its slot, or returns the equal one that is there. */
  private static Entry place(Entry[] table, Entry entry) {
    int slot = entry.hash & (table.length - 1);
    for (Entry e = table[slot]; e != null; e = table[slot]) {
      if (e.is(entry.upper, 0, entry.upper.length, entry.hash)) {
        return e;
      }
      slot = (slot + 1) & (table.length - 1);
    }
    table[slot] = entry;
    return entry;
  }

  /** The number of a name given as text, a new one if need be. */
  int code(String upperCase) {
    byte[] bytes = upperCase.getBytes(StandardCharsets.ISO_8859_1);
    return code(bytes, 0, bytes.length);
  }

  /** The number of a name, or -1 where no record has it. */
  synchronized int known(String upperCase) {
    return upperCase.isEmpty() ? -1 : names.indexOf(upperCase);
  }

  /** The name of a number, upper case; empty for a complex instance. */
  synchronized String name(int code) {
    return names.get(code);
  }

  /** How many numbers there are. */
  synchronized int size() {
    return names.size();
  }
}
