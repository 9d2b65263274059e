package org.coatrun.ifcimport.part21;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
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

  /** Names are shorter. */
  static final int LONGEST = 200;

  private static final VarHandle EIGHT =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  /** Without the bits that tell lower from upper case. */
  private static final long CASELESS = 0xdfdfdfdfdfdfdfdfL;

  /** Unforeseeable, so that no file can be made whose names all share a slot. */
  private final long factor = new SplittableRandom().nextLong() | 1;

  /** Grows by being replaced; what stands below {@link #used} never changes. */
  private volatile String[] names = new String[64];

  private volatile int used;
  private volatile Entry[] entries = new Entry[1024];

  NameTable() {
    names[COMPLEX] = "";
    used = COMPLEX + 1;
  }

  private record Entry(byte[] upper, int hash, int code) {

    boolean is(byte[] bytes, int from, int to, int otherHash) {
      if (hash != otherHash || upper.length != to - from) {
        return false;
      }
      if (Arrays.equals(upper, 0, upper.length, bytes, from, to)) {
        return true;
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
    int hash = hash(bytes, from, to);
    int known = known(bytes, from, to, hash);
    return known < 0 ? add(bytes, from, to, hash) : known;
  }

  /** As {@link #code(byte[], int, int)}; -1 where what stands there is no name. */
  int ifName(byte[] bytes, int from, int to) {
    int hash = hash(bytes, from, to);
    int known = known(bytes, from, to, hash);
    return known >= 0 ? known : isName(bytes, from, to) ? add(bytes, from, to, hash) : -1;
  }

  private static boolean isName(byte[] bytes, int from, int to) {
    if (from == to || to - from >= LONGEST || !Ascii.isNameStart(bytes[from] & 0xff)) {
      return false;
    }
    for (int i = from + 1; i < to; i++) {
      if (!Ascii.isName(bytes[i] & 0xff)) {
        return false;
      }
    }
    return true;
  }

  private int known(byte[] bytes, int from, int to, int hash) {
    Entry[] table = entries;
    int slot = hash & (table.length - 1);
    for (Entry e = table[slot]; e != null; e = table[slot]) {
      if (e.is(bytes, from, to, hash)) {
        return e.code;
      }
      slot = (slot + 1) & (table.length - 1);
    }
    return -1;
  }

  /** Eight bytes at a time, as every record's name is looked up. */
  private int hash(byte[] bytes, int from, int to) {
    long hash = to - from;
    int i = from;
    for (; i + 8 <= to; i += 8) {
      hash = mix(hash ^ ((long) EIGHT.get(bytes, i) & CASELESS));
    }
    long rest = 0;
    for (; i < to; i++) {
      rest = rest << 8 | (bytes[i] & 0xdf);
    }
    return (int) mix(hash ^ rest);
  }

  private long mix(long value) {
    long mixed = value * factor;
    return mixed ^ (mixed >>> 32);
  }

  private synchronized int add(byte[] bytes, int from, int to, int hash) {
    byte[] upper = new byte[to - from];
    for (int i = 0; i < upper.length; i++) {
      upper[i] = Ascii.upper(bytes[from + i]);
    }
    if (used == names.length) {
      names = Arrays.copyOf(names, 2 * used);
    }
    names[used] = new String(upper, StandardCharsets.ISO_8859_1).intern();
    Entry found = place(entries, new Entry(upper, hash, used));
    if (found.code == used) {
      used = found.code + 1;
      if (used * 2 > entries.length) {
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
    return upperCase.isEmpty() ? -1 : Arrays.asList(names).subList(0, used).indexOf(upperCase);
  }

  /** The name of a number, upper case; empty for a complex instance. */
  String name(int code) {
    return names[Objects.checkIndex(code, used)];
  }

  /** How many numbers there are. */
  int size() {
    return used;
  }
}
