package org.coatrun.ifcimport.part21;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.coatrun.shared.finding.FileFinding;

/**
 * Decodes what stands between two quotes: doubled quotes and the control directives of ISO
 * 10303-21, 6.4.3 ({@code \S\}, {@code \P.\}, {@code \X\}, {@code \X2\}, {@code \X4\}, {@code \\}).
 *
 * <p>Bytes above 127, which the standard does not allow and exporters write, are UTF-8 where that
 * fits the whole text, else Windows-1252. A directive that is not valid stays as it is written.
 */
final class TextDecoder {

  private final byte[] bytes;
  private final int end;
  private final FaultSink faults;
  private final StringBuilder out = new StringBuilder();
  private Charset raw = StandardCharsets.US_ASCII;
  private Charset page = StandardCharsets.ISO_8859_1;
  private int pos;

  private TextDecoder(byte[] bytes, int start, int end, FaultSink faults) {
    this.bytes = bytes;
    this.pos = start;
    this.end = end;
    this.faults = faults;
  }

  /** The text in {@code bytes[start, end)}, quotes not included. */
  static String decode(byte[] bytes, int start, int end, FaultSink faults) {
    for (int i = start; i < end; i++) {
      byte c = bytes[i];
      if (c < 0 || c == '\\' || c == '\'') {
        return new TextDecoder(bytes, start, end, faults).run();
      }
    }
    return new String(bytes, start, end - start, StandardCharsets.ISO_8859_1);
  }

  private String run() {
    chooseRaw();
    int from = pos;
    while (pos < end) {
      byte c = bytes[pos];
      if (c == '\'') {
        flush(from, pos + 1);
        pos = Math.min(pos + 2, end);
        from = pos;
      } else if (c == '\\') {
        flush(from, pos);
        directive();
        from = pos;
      } else {
        pos++;
      }
    }
    flush(from, end);
    return out.toString();
  }

  private void chooseRaw() {
    int i = pos;
    while (i < end && bytes[i] >= 0) {
      i++;
    }
    if (i == end) {
      return;
    }
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, pos, end - pos));
      raw = StandardCharsets.UTF_8;
    } catch (CharacterCodingException e) {
      raw = Pages.WINDOWS;
      faults.fault(FileFinding.FOREIGN_TEXT, "a text is not UTF-8 and was read as Windows-1252");
    }
  }

  private void flush(int from, int to) {
    if (to > from) {
      out.append(new String(bytes, from, to - from, raw));
    }
  }

  private void directive() {
    int kind = peek(1);
    if (kind == '\\') {
      out.append('\\');
      pos += 2;
    } else if (kind == 'S' && peek(2) == '\\' && peek(3) >= ' ' && peek(3) < 127) {
      out.append(new String(new byte[] {(byte) (peek(3) + 128)}, page));
      pos += 4;
    } else if (kind == 'P' && peek(2) >= 'A' && peek(2) <= 'I' && peek(3) == '\\') {
      page = Pages.latin(peek(2) - 'A' + 1);
      pos += 4;
    } else if (kind == 'X' && peek(2) == '\\' && Ascii.hex(peek(3)) >= 0 && hex(pos + 3, 2) >= 0) {
      out.append((char) hex(pos + 3, 2));
      pos += 5;
    } else if (kind == 'X' && (peek(2) == '2' || peek(2) == '4') && peek(3) == '\\') {
      wide(peek(2) == '2' ? 4 : 8);
    } else {
      out.append('\\');
      pos++;
      faults.fault(FileFinding.BAD_TEXT, "a backslash in a text begins no valid directive");
    }
  }

  /** {@code \X2\} and {@code \X4\}: groups of digits up to {@code \X0\}. */
  private void wide(int digits) {
    pos += 4;
    int group = hex(pos, digits);
    while (group >= 0) {
      character(group);
      pos += digits;
      group = hex(pos, digits);
    }
    if (peek(0) == '\\' && peek(1) == 'X' && peek(2) == '0' && peek(3) == '\\') {
      pos += 4;
    } else {
      faults.fault(FileFinding.BAD_TEXT, "a \\X" + digits / 2 + "\\ in a text is not closed");
    }
    replaceLoneSurrogates();
  }

  private void character(int code) {
    if (code > Character.MAX_CODE_POINT) {
      out.append('\uFFFD');
      faults.fault(FileFinding.BAD_TEXT, "a text names a character beyond Unicode");
    } else {
      out.appendCodePoint(code);
    }
  }

  private void replaceLoneSurrogates() {
    for (int i = 0; i < out.length(); i++) {
      char c = out.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < out.length()
              && Character.isLowSurrogate(out.charAt(i + 1));
      if (pair) {
        i++;
      } else if (Character.isSurrogate(c)) {
        out.setCharAt(i, '\uFFFD');
        faults.fault(FileFinding.BAD_TEXT, "a text holds half of a surrogate pair");
      }
    }
  }

  private int peek(int ahead) {
    return pos + ahead < end ? bytes[pos + ahead] & 0xff : -1;
  }

  /**
   * A number of so many hexadecimal digits, or -1; values above 31 bits come out as the maximum.
   */
  private int hex(int from, int digits) {
    if (from + digits > end) {
      return -1;
    }
    long value = 0;
    for (int i = from; i < from + digits; i++) {
      int digit = bytes[i] < 0 ? -1 : Ascii.hex(bytes[i]);
      if (digit < 0) {
        return -1;
      }
      value = (value << 4) | digit;
    }
    return (int) Math.min(value, Integer.MAX_VALUE);
  }
}
