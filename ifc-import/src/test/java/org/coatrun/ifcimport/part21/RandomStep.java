package org.coatrun.ifcimport.part21;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Makes random records and writes them in one of the ways that the format allows. */
final class RandomStep {

  private static final String[] NAMES = {"IFCBEAM", "IFCCARTESIANPOINT", "IFCA", "IFC_X9"};
  private static final String CHARACTERS = "aZ09 '\\/*;#=(),.$\"\n\t\u00e4\u2265\u03b1\ud83d\ude00";

  private final Random random;

  RandomStep(Random random) {
    this.random = random;
  }

  StepRecord record(long id) {
    return StepRecord.simple(id, NAMES[random.nextInt(NAMES.length)], values(0));
  }

  private List<Value> values(int depth) {
    List<Value> values = new ArrayList<>();
    int count = random.nextInt(6);
    for (int i = 0; i < count; i++) {
      values.add(value(depth));
    }
    return values;
  }

  private Value value(int depth) {
    return switch (random.nextInt(depth > 3 ? 8 : 10)) {
      case 0 -> new Value.Omitted();
      case 1 -> new Value.Derived();
      case 2 -> new Value.Ref(random.nextLong() & Long.MAX_VALUE >>> random.nextInt(40));
      case 3 -> new Value.Text(text());
      case 4 -> new Value.Int(random.nextLong() >> random.nextInt(64));
      case 5 -> new Value.Real(real());
      case 6 -> new Value.Enum(random.nextBoolean() ? "T" : "NOTDEFINED");
      case 7 -> new Value.Binary(Integer.toHexString(random.nextInt()).toUpperCase(Locale.ROOT));
      case 8 -> new Value.ListOf(values(depth + 1));
      default -> new Value.Typed("IFCLABEL", value(depth + 1));
    };
  }

  private double real() {
    double any = Double.longBitsToDouble(random.nextLong());
    boolean simple = random.nextBoolean() || !Double.isFinite(any);
    return simple ? random.nextInt(2_000_000) / 1000.0 - 1000 : any;
  }

  private String text() {
    int[] all = CHARACTERS.codePoints().toArray();
    StringBuilder out = new StringBuilder();
    int count = random.nextInt(12);
    for (int i = 0; i < count; i++) {
      out.appendCodePoint(all[random.nextInt(all.length)]);
    }
    return out.toString();
  }

  /** The record as text, with white space and comments strewn in. */
  String write(StepRecord record) {
    StringBuilder out = new StringBuilder();
    out.append(gap()).append('#').append(record.id()).append(gap()).append('=').append(gap());
    boolean lower = random.nextInt(8) == 0;
    out.append(lower ? record.name().toLowerCase(Locale.ROOT) : record.name()).append(gap());
    list(out, record.values());
    return out.append(gap()).append(';').append(random.nextInt(3) == 0 ? "" : "\n").toString();
  }

  private String gap() {
    return switch (random.nextInt(24)) {
      case 0 -> " ";
      case 1 -> "\r\n";
      case 2 -> "/* it's; a #1=IFCX('comment */";
      case 3 -> "\t/**/\n";
      case 4 -> "/***/";
      default -> "";
    };
  }

  private void list(StringBuilder out, List<Value> values) {
    out.append('(');
    for (int i = 0; i < values.size(); i++) {
      out.append(i > 0 ? "," : "").append(gap());
      value(out, values.get(i));
      out.append(gap());
    }
    out.append(')');
  }

  private void value(StringBuilder out, Value value) {
    if (value instanceof Value.Ref ref) {
      out.append('#').append(ref.id());
    } else if (value instanceof Value.Text text) {
      text(out, text.text());
    } else if (value instanceof Value.Int whole) {
      out.append(whole.number());
    } else if (value instanceof Value.Real real) {
      out.append(real.number());
    } else if (value instanceof Value.Enum item) {
      out.append('.').append(item.item()).append('.');
    } else if (value instanceof Value.Binary binary) {
      out.append('"').append(binary.digits()).append('"');
    } else if (value instanceof Value.ListOf list) {
      list(out, list.values());
    } else if (value instanceof Value.Typed typed) {
      out.append(typed.name()).append(gap());
      list(out, List.of(typed.inner()));
    } else {
      out.append(value instanceof Value.Derived ? '*' : '$');
    }
  }

  private void text(StringBuilder out, String text) {
    out.append('\'');
    text.codePoints().forEach(c -> character(out, c));
    out.append('\'');
  }

  private void character(StringBuilder out, int c) {
    if (c == '\'') {
      out.append("''");
    } else if (c == '\\') {
      out.append("\\\\");
    } else if (c >= 0x10000) {
      out.append(random.nextBoolean() ? wide(c, 2) : String.format("\\X4\\%08X\\X0\\", c));
    } else if (c > 255 || (c > 126 && random.nextBoolean())) {
      out.append(wide(c, 2));
    } else if (c > 126) {
      out.append(random.nextBoolean() ? String.format("\\X\\%02X", c) : "\\S\\" + (char) (c - 128));
    } else {
      out.append((char) c);
    }
  }

  private static String wide(int c, int bytes) {
    StringBuilder out = new StringBuilder("\\X" + bytes + "\\");
    for (char unit : Character.toChars(c)) {
      out.append(String.format("%04X", (int) unit));
    }
    return out.append("\\X0\\").toString();
  }
}
