package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.List;
import org.coatrun.cli.console.Plain;
import org.coatrun.shared.bid.inspection.FieldRow;
import org.coatrun.shared.bid.inspection.FloorJudgement;
import org.coatrun.shared.bid.inspection.InspectionJudgement;
import org.coatrun.shared.bid.inspection.Respray;
import org.coatrun.shared.bid.inspection.SetJudgement;
import org.coatrun.shared.rules.ThicknessJudge.Averaging;

/**
 * Judged readings on the screen: both rules for each member and floor, then what to spray again.
 */
public final class ReadingsScreen {

  /** The two rules, with where they come from. */
  static final List<String> RULES =
      List.of(
          "Averaging rule (ASTM E605 8.1): a reading over the design by more than 1/4 in counts as"
              + " design + 1/4 in;",
          "  the average must reach the design; no reading may lie under it by more than 1/4 in, or"
              + " 25 % where the design is under 1 in.",
          "10 % rule (IBC 1705.15; 1705.14.4 of 2018): not more than 10 % of the readings may lie"
              + " under the design.");

  private final PrintWriter out;
  private final UnitSystem units;

  private ReadingsScreen(PrintWriter out, UnitSystem units) {
    this.out = out;
    this.units = units;
  }

  /** Prints a judgement in {@code units}, with the mark of an invented listing if it has one. */
  public static void print(
      PrintWriter out, InspectionJudgement judgement, UnitSystem units, List<String> cautions) {
    ReadingsScreen screen = new ReadingsScreen(out, units);
    screen.sets(judgement.sets());
    screen.floors(judgement.floors());
    screen.respray(judgement.resprays());
    RULES.forEach(out::println);
    Cautions.print(out, cautions);
  }

  private void sets(List<SetJudgement> sets) {
    String unit = ", " + units.thicknessUnit();
    TextTable table =
        new TextTable(
            5,
            "Floor",
            "Member",
            "Section",
            "Averaging",
            "10 % rule",
            "Set",
            "Design" + unit,
            "Read",
            "Blank",
            "Least" + unit,
            "Lowest" + unit,
            "Average" + unit,
            "Under");
    sets.forEach(set -> row(table, set));
    table.print(out);
    out.println();
  }

  private void row(TextTable table, SetJudgement set) {
    FieldRow head = set.head();
    boolean read = set.taken() > 0;
    table.row(
        head.floor(),
        called(head.name(), head.kind(), head.guid()),
        head.section(),
        word(read, set.passesAveraging()),
        word(read, set.passesTenPercent()),
        Integer.toString(head.set()),
        units.showThickness(head.design()),
        Integer.toString(set.taken()),
        Integer.toString(set.missing()),
        units.showThickness(head.least()),
        set.averaging().map(Averaging::lowest).map(units::showThickness).orElse(""),
        set.averaging().map(Averaging::average).map(units::showThickness).orElse(""),
        set.tenPercent().map(t -> Long.toString(t.below())).orElse(""));
  }

  private void floors(List<FloorJudgement> floors) {
    TextTable table =
        new TextTable(
            3,
            "Floor",
            "Averaging",
            "10 % rule",
            "Members and spots",
            "Not read",
            "Read",
            "Blank",
            "Under");
    floors.forEach(floor -> row(table, floor));
    table.print(out);
    out.println();
  }

  private static void row(TextTable table, FloorJudgement floor) {
    boolean read = floor.readings() > 0;
    table.row(
        floor.floor(),
        word(read, floor.passesAveraging()),
        word(read, floor.passesTenPercent()),
        Integer.toString(floor.sets()),
        Integer.toString(floor.notRead()),
        Long.toString(floor.readings()),
        Long.toString(floor.missing()),
        Long.toString(floor.below()));
  }

  private void respray(List<Respray> resprays) {
    if (resprays.isEmpty()) {
      out.println("Nothing that was read must be sprayed again.");
    } else {
      out.println("To be sprayed again:");
    }
    for (Respray respray : resprays) {
      String what = respray.floor() + ", " + called(respray.name(), respray.kind(), respray.guid());
      out.println("  " + Plain.text(what + ": " + respray.reason()));
      respray.places().forEach(place -> out.println("    too thin: " + Plain.text(place)));
    }
    out.println();
  }

  static String word(boolean read, boolean passes) {
    return read ? passes ? "passes" : "fails" : "not read";
  }

  private static String called(String name, String kind, String guid) {
    return name.isEmpty() ? kind + " " + guid : name;
  }
}
