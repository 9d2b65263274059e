package org.coatrun.testmodels.step;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Writes one Part 21 file as a stream: a record is in the file as soon as it is added, and nothing
 * of it is kept but its number.
 *
 * <p>Attributes are {@link Ref}, {@link Token}, {@link String} (quoted and encoded), {@link Double}
 * (a real), {@link Integer}, {@link Boolean}, {@code double[]}, {@code int[]} and lists of these.
 * Anything else is refused with an {@link IllegalArgumentException}. A failing stream gives an
 * {@link UncheckedIOException}.
 */
public final class StepWriter implements Closeable {
  private static final int FLUSH_AT = 1 << 16;

  private final OutputStream out;
  private final byte[] buffer = new byte[FLUSH_AT];
  private int used;
  private int lastId;
  private long flushed;

  /** Starts the file with its header. */
  public StepWriter(OutputStream out, String schema, String fileName, String timestamp) {
    this.out = out;
    line("ISO-10303-21;");
    line("HEADER;");
    line("FILE_DESCRIPTION(('ViewDefinition [CoordinationView]'),'2;1');");
    String name = StepText.encode(fileName);
    line("FILE_NAME('" + name + "','" + timestamp + "',(''),(''),'coatrun test-models','','');");
    line("FILE_SCHEMA(('" + schema + "'));");
    line("ENDSEC;");
    line("DATA;");
  }

  /** Adds a record and returns where it stands. */
  public Ref add(String entity, Object... attributes) {
    Ref ref = new Ref(++lastId);
    put('#');
    putInt(ref.id());
    put('=');
    raw(entity);
    putList(attributes);
    put(';');
    put('\n');
    return ref;
  }

  /** Returns how many records have been written. */
  public int records() {
    return lastId;
  }

  /** Returns how many bytes have been written. */
  public long bytes() {
    return flushed + used;
  }

  /** Ends the file; the stream stays open. */
  @Override
  public void close() throws IOException {
    line("ENDSEC;");
    line("END-ISO-10303-21;");
    flush();
    out.flush();
  }

  private void putValue(Object value) {
    if (value instanceof Ref ref) {
      put('#');
      putInt(ref.id());
    } else if (value instanceof Double real) {
      putReal(real);
    } else if (value instanceof Token token) {
      raw(token.text());
    } else if (value instanceof String text) {
      put('\'');
      raw(StepText.encode(text));
      put('\'');
    } else if (value instanceof Integer whole) {
      putInt(whole);
    } else if (value instanceof Boolean truth) {
      raw(truth ? ".T." : ".F.");
    } else {
      putAggregate(value);
    }
  }

  private void putAggregate(Object value) {
    if (value instanceof double[] reals) {
      putReals(reals);
    } else if (value instanceof int[] wholes) {
      putInts(wholes);
    } else if (value instanceof List<?> list) {
      putList(list.toArray());
    } else {
      throw new IllegalArgumentException("Not a Part 21 value: " + value);
    }
  }

  private void putList(Object[] values) {
    put('(');
    for (int i = 0; i < values.length; i++) {
      if (i > 0) {
        put(',');
      }
      putValue(values[i]);
    }
    put(')');
  }

  private void putReals(double[] values) {
    put('(');
    for (int i = 0; i < values.length; i++) {
      if (i > 0) {
        put(',');
      }
      putReal(values[i]);
    }
    put(')');
  }

  private void putInts(int[] values) {
    put('(');
    for (int i = 0; i < values.length; i++) {
      if (i > 0) {
        put(',');
      }
      putInt(values[i]);
    }
    put(')');
  }

  private void putReal(double value) {
    room(32);
    used = StepNumber.put(value, buffer, used);
  }

  private void putInt(int value) {
    room(16);
    if (value < 0) {
      buffer[used++] = '-';
    }
    used = StepNumber.putWhole(Math.abs((long) value), buffer, used);
  }

  private void line(String text) {
    raw(text);
    put('\n');
  }

  private void raw(String text) {
    for (int i = 0; i < text.length(); i++) {
      put(text.charAt(i));
    }
  }

  private void put(char c) {
    room(1);
    buffer[used++] = (byte) c;
  }

  private void room(int bytes) {
    if (used + bytes > FLUSH_AT) {
      flush();
    }
  }

  private void flush() {
    try {
      out.write(buffer, 0, used);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    flushed += used;
    used = 0;
  }
}
