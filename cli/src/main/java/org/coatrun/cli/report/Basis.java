package org.coatrun.cli.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/** What the numbers of a takeoff mean, and by which rules they were found: basis.txt. */
public final class Basis {

  /** One definition or rule a line. */
  public static final List<String> LINES =
      List.of(
          "body_m2: all faces of the element's body. body = inside + ends + holes + covered +"
              + " exposed, for each element.",
          "inside_m2: faces of a hollow interior, which nobody coats, whatever stands in it.",
          "ends_m2: cut ends of a swept body, where nothing covers them; of deck, its top and"
              + " edges: only the soffit is ever coated.",
          "holes_m2: walls of holes under the threshold, less the mouths that they open; it may be"
              + " negative, so that exposed_m2 does not depend on small holes.",
          "covered_m2: faces in contact with, or inside, something else; encased_m2 is the part of"
              + " it that is inside something, the bore of a hollow section included.",
          "exposed_m2: what must be coated if the element must be.",
          "heated_perimeter_m: the exposed part of the section's contour, with fillets where the"
              + " model gives them, else with sharp corners (perimeter_basis).",
          "coating_offset_m2_per_m: the coat's own volume per length and per thickness, for a coat"
              + " of 1 in (25.4 mm): the area across the member between its exposed contour and"
              + " that contour moved outward by 1 in, round at convex corners, square beside"
              + " covered faces, what strips share at concave corners and in fillets counted once,"
              + " divided by 1 in. Beside heated_perimeter_m it shows what area by thickness"
              + " misses.",
          "coating_corner_factor: k; the coat across a member holds heated_perimeter_m * t + k *"
              + " t^2 for a thickness t, so that coating_offset_m2_per_m = heated_perimeter_m + k *"
              + " 0.0254; exact while the coats of facing sides do not meet and fillets are not"
              + " filled.",
          "section_along: even, or least favourable where the section changes along the member:"
              + " area, contour and section factor are then those where contour over area is"
              + " greatest.",
          "flute_voids_m3: voids over the member, from its open flange up to the soffit, in decks"
              + " whose flutes are drawn and run within 45 degrees of square to it; decks that are"
              + " drawn flat leave none here.",
          "soffit_plan_m2 and soffit_m2 of deck: its underside seen square to it, and its faces as"
              + " drawn, whatever covers them; where flutes is flat, the sheet is the plan times"
              + " the developed factor of the job file's deck profile.",
          "section_factor_per_m: heated perimeter over area of steel, Hp/A, in 1/m.",
          "w_over_d: weight per length over heated perimeter in lb/ft/in; W is the nominal weight"
              + " where the designation states one, else the area of steel at 490 lb/ft3.",
          "weight_kg: nominal weight by length where the designation states one that is within 25 %"
              + " of the drawn section's, else volume by 7,850 kg/m3 (weight_source).",
          "status: counted, left out (no coating is called for, and why) or unresolved (it may need"
              + " coating and is not in the sums; see findings.csv).",
          "Files are in SI units whatever the screen shows. Areas and volumes are rounded to nine"
              + " decimals, other numbers to six, halves to even; sums are of unrounded numbers.",
          "In CSV files, text that a spreadsheet would take for a formula has an apostrophe in"
              + " front.");

  private Basis() {}

  static void write(Writer writer, Results results) throws IOException {
    writer.write("What the numbers mean\n\n");
    for (String line : results.basis()) {
      writer.write("- " + line + "\n");
    }
    writer.write("\nCautions\n\n");
    for (String line : results.cautions()) {
      writer.write("- " + line + "\n");
    }
  }
}
