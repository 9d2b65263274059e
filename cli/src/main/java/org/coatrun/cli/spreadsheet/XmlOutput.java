package org.coatrun.cli.spreadsheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Text on its way into a part of the workbook, gathered as UTF-8 and handed on in portions. */
final class XmlOutput {

  private static final int PORTION = 1 << 16;

  private final OutputStream out;
  private final byte[] bytes = new byte[PORTION];
  private int size;

  XmlOutput(OutputStream out) {
    this.out = out;
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  XmlOutput put(String text) throws IOException {
    return put(bytes(text));
  }

  XmlOutput put(byte[] text) throws IOException {
    if (text.length > PORTION - size) {
      flush();
    }
    if (text.length > PORTION) {
      out.write(text);
      return this;
    }
    System.arraycopy(text, 0, bytes, size, text.length);
    size += text.length;
    return this;
  }

  void flush() throws IOException {
    out.write(bytes, 0, size);
    size = 0;
  }
}
