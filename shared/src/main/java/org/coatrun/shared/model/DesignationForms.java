package org.coatrun.shared.model;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coatrun.shared.model.SectionDesignation.Family;
import org.coatrun.shared.units.LinearDensity;

/** The forms that designations of steel sections take in the section tables of the world. */
final class DesignationForms {

  /**
   * Family, how the weight is stated, form. {@code #} is a number, {@code <d>} the depth and {@code
   * <w>} the weight as numbers that count. {@code kg} is kilograms per metre, {@code by} is pounds
   * per foot where the depth is in inches and kilograms per metre where it is in millimetres; the
   * number after it is the greatest weight that the form can mean. The first form that fits wins,
   * so the longer ones stand first.
   */
  private static final String TABLE =
      """
      JOIST        -       \\d{1,3}(?:DLH|KCS|LH|K)\\d{1,2}
      I_SHAPE      kg1100  (?:UKB|UKC|UBP|UB|UC)-?#X#X<w>
      I_SHAPE      kg1100  #X#X<w>-?(?:UKB|UKC|UBP|UB|UC)
      I_SHAPE      kg1100  #X#X?(?:UKB|UKC|UBP|UB|UC)X?<w>
      I_SHAPE      kg1100  \\d{3}(?:UB|UC|UBP|WB|WC)-?<w>
      CHANNEL      kg100   (?:UKPFC|PFC)-?#X#X<w>
      CHANNEL      kg100   #X#X<w>-?(?:UKPFC|PFC)
      CHANNEL      -       PFC-?\\d{2,3}|\\d{2,3}PFC
      TEE          -       1/2-?(?:IPE|HE[ABM]?|W|UB)-?\\d{2,4}[ABM]?
      TEE          by470   (?:WT|MT|ST)-?<d>X<w>
      I_SHAPE      by1500  WF?-?<d>X<w>
      I_SHAPE      by500   HP-?<d>X<w>
      I_SHAPE      kg1400  (?:HD|HL)-?<d>X<w>
      CHANNEL      by90    MC-?<d>X<w>
      CHANNEL      by80    C-?<d>X<w>
      I_SHAPE      by185   S-?<d>X<w>
      I_SHAPE      by19    M-?<d>X<w>
      HOLLOW       -       (?:HSS|TS)-?#X#X#
      ROUND_HOLLOW -       HSS-?#X#
      ROUND_HOLLOW -       P(?:IPE)?-?#-?(?:STD|XXS|XS|SCH\\d+|XX?-STRONG)
      ROUND_HOLLOW -       (?:CHS|RRO|ROR|RO|BUIS)-?#X#|#X#CHS
      HOLLOW       -       (?:RHS|SHS|QRO|QHP|RHP|SHP|VKR|KKR|VHP|MSH|KOKER)-?#X#(?:X#)?
      HOLLOW       -       #X#(?:X#)?(?:RHS|SHS)
      I_SHAPE      kg300   IPE[- ]?(?:AA|A|O|R|V)?-?<d>X<w>
      I_SHAPE      -       IPE[- ]?(?:AA|A|O|R|V)?-?\\d{2,3}(?:AA|A|O|R|V)?
      I_SHAPE      -       (?:IPN|INP)-?\\d{2,3}
      I_SHAPE      -       HE[- ]?(?:AA|A|B|M)-?\\d{3,4}
      I_SHAPE      -       HE-?\\d{3,4}-?(?:AA|A|B|M)
      I_SHAPE      kg1400  HE-?<d>X<w>
      CHANNEL      -       (?:UPN|UPE|UNP|UAP)-?\\d{2,3}
      CHANNEL      -       U-?\\d{2,3}(?:X#){0,3}
      ANGLE        -       2?LN?P?-?#X#X#
      ANGLE        -       2?LN?P?-?\\d{2,3}X#
      ANGLE        -       #X#(?:X#)?(?:EA|UA|RSA)
      I_SHAPE      -       (?:HN|HW|HM|H|I|WI|BH)-?#X#X#X#
      CHANNEL      -       (?:C|CEE|LC)-?\\d{2,3}X\\d{2,3}(?:X#){1,2}
      ZED          -       Z(?:ED)?-?\\d{2,3}(?:\\.\\d+)?(?:X#){1,4}
      FLAT         -       (?:BPL|PLT|PL|FLT|FLA|FL|FB)-?#X#
      FLAT         -       PL-?#
      """;

  /** Depths above this are millimetres: the deepest rolled section in inches is a 44. */
  private static final double MOST_INCHES = 50;

  private static final String NUMBER = "(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:-\\d+/\\d+|/\\d+)?";
  private static final List<Form> FORMS = TABLE.lines().map(DesignationForms::form).toList();
  private static final Pattern BY = Pattern.compile("(?<=[\\d\"'] ?)[X×*](?= ?[\\d.])");
  private static final Pattern GAP =
      Pattern.compile("(?<=\\d) ?X ?(?=\\d)|(?<=[A-Z]) (?=\\d)|(?<=\\d) (?=[A-Z]{1,3}\\b)");

  private record Form(Family family, String weight, Pattern pattern) {}

  private DesignationForms() {}

  /** The designation that starts first; of several that start together the first in the table. */
  static Optional<SectionDesignation> find(String text) {
    String plain = plain(text);
    SectionDesignation best = null;
    int start = Integer.MAX_VALUE;
    for (Form form : FORMS) {
      Matcher m = form.pattern.matcher(plain);
      if (m.find() && m.start() < start) {
        Optional<SectionDesignation> found = read(form, m);
        if (found.isPresent()) {
          best = found.get();
          start = m.start();
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static String plain(String text) {
    String upper =
        Normalizer.normalize(text, Normalizer.Form.NFKC).toUpperCase(Locale.ROOT).replace(',', '.');
    String withX = BY.matcher(upper).replaceAll("X").replaceAll("(?<=\\d)(\"|''| ?MM\\b)", "");
    return GAP.matcher(withX).replaceAll(m -> m.group().contains("X") ? "X" : "");
  }

  private static Form form(String line) {
    String[] parts = line.trim().split("\\s+", 3);
    String regex =
        parts[2]
            .replace("#", "(?:" + NUMBER + ")")
            .replace("<d>", "(?<d>" + NUMBER + ")")
            .replace("<w>", "(?<w>\\d+(?:\\.\\d+)?)");
    return new Form(
        Family.valueOf(parts[0]),
        parts[1],
        Pattern.compile("(?<![A-Z0-9./])(?:" + regex + ")(?![A-Z0-9]|[./]\\d)"));
  }

  private static Optional<SectionDesignation> read(Form form, Matcher m) {
    Optional<LinearDensity> weight = Optional.empty();
    if (!form.weight.equals("-")) {
      double value = Double.parseDouble(m.group("w"));
      if (value > Double.parseDouble(form.weight.substring(2)) || value == 0) {
        return Optional.empty();
      }
      weight = Optional.of(weight(form, m, value));
    }
    return Optional.of(new SectionDesignation(form.family, m.group().replace(" ", ""), weight));
  }

  private static LinearDensity weight(Form form, Matcher m, double value) {
    boolean pounds = form.weight.startsWith("by") && number(m.group("d")) <= MOST_INCHES;
    return pounds ? LinearDensity.ofPoundsPerFoot(value) : LinearDensity.ofKilogramsPerMetre(value);
  }

  /** The value of {@code 12}, {@code 12.5}, {@code 3-1/2} or {@code 1/2}. */
  private static double number(String text) {
    double sum = 0;
    for (String part : text.split("-")) {
      String[] fraction = part.split("/");
      double over = fraction.length > 1 ? Double.parseDouble(fraction[1]) : 1;
      sum += Double.parseDouble(fraction[0]) / over;
    }
    return sum;
  }
}
