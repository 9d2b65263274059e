package org.coatrun.cli.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes lists of numbers, each on one line whatever the printer does with lists: past a generator,
 * into the stream that it writes to, and had better not flush.
 */
final class NumberList {

  private final JsonGenerator json;
  private final OutputStream out;
  private final Digits text = new Digits();

  NumberList(JsonGenerator json) {
    this.json = json;
    this.out = (OutputStream) json.getOutputTarget();
  }

  void begin() {
    text.clear();
    text.put('[');
  }

  /** Adds a whole number that is not negative. */
  void whole(int value) {
    next();
    text.whole(value);
  }

  /** Adds a number given in ten-thousandths. */
  void tenThousandths(long value) {
    next();
    text.tenThousandths(value);
  }

  /** Adds a number given in billionths. */
  void billionths(long value) {
    next();
    text.billionths(value);
  }

  /** Writes the list as a field. */
  void end(String field) throws IOException {
    text.put(']');
    json.writeFieldName(field);
    json.writeRawValue("");
    json.flush();
    text.writeTo(out);
  }

  private void next() {
    if (text.length() > 1) {
      text.put(',');
    }
  }
}
