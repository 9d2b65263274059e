package org.coatrun.cli.line;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.coatrun.cli.console.Plain;
import org.coatrun.cli.report.TextTable;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.SpotComparison;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** A line plan on the screen: machine, risers, floors, spots compared, what to load. */
public final class LineScreen {

  private final PrintWriter out;
  private final LineResult result;
  private final LinePlan plan;
  private final UnitSystem units;

  private LineScreen(PrintWriter out, LineResult result, UnitSystem units) {
    this.out = out;
    this.result = result;
    this.plan = result.plan();
    this.units = units;
  }

  /** Prints the plan in {@code units}; findings and cautions are the caller's. */
  public static void print(PrintWriter out, LineResult result, UnitSystem units) {
    var screen = new LineScreen(out, result, units);
    screen.machines();
    screen.floors();
    screen.spots();
    screen.hardware();
    screen.outOfReach();
  }

  private void machines() {
    for (MachineSpot m : plan.machines()) {
      out.println(
          Plain.text(
              "Machine "
                  + m.name()
                  + " on "
                  + storey(m.floor())
                  + " at "
                  + result.request().wording().place(m.at())
                  + (m.needs().isEmpty() ? "" : ": " + String.join("; ", m.needs()))));
    }
    for (RiserUse r : plan.risers()) {
      out.println(
          Plain.text(
              (r.standpipe() ? "Standpipe " : "Hose riser ")
                  + r.riser().name()
                  + " from "
                  + storey(r.from())
                  + " to "
                  + storey(r.to())
                  + ", rise "
                  + show(r.rise())));
    }
    out.println(proof());
    out.println();
  }

  private String proof() {
    var p = plan.proof();
    if (plan.machines().isEmpty()) {
      return "No line was found.";
    }
    return p.optimal()
        ? "Proven best among the spots, risers and outlets looked at."
        : String.format(Locale.ROOT, "Not proven best: at most %.1f %% off.", 100 * p.gap());
  }

  private void floors() {
    TextTable table =
        new TextTable(
            1,
            "Floor",
            "Places",
            "Coating, " + units.materialUnit(),
            "Set-ups",
            "Flexible, " + units.lengthUnit(),
            "Pipe, " + units.lengthUnit(),
            "Rise, " + units.lengthUnit());
    for (FloorPlan f : plan.floors()) {
      table.row(
          f.outline().storey(),
          Integer.toString(f.cells().size()),
          units.show(coating(f)),
          Integer.toString(f.setUps().size()),
          f.check().map(c -> units.show(c.flexible())).orElse(""),
          f.check().map(c -> units.show(c.pipe())).orElse(""),
          f.check().map(c -> units.show(c.rise())).orElse(""));
    }
    table.print(out);
    out.println();
  }

  private Volume coating(FloorPlan floor) {
    Volume sum = Volume.ofCubicMetres(0);
    for (int c : floor.cells()) {
      sum = sum.plus(plan.cells().get(c).coating());
    }
    return sum;
  }

  private void spots() {
    if (plan.comparison().isEmpty()) {
      return;
    }
    TextTable table =
        new TextTable(
            2,
            "Spot",
            "Floor",
            "Cost",
            "Not reached",
            "Flexible, " + units.lengthUnit(),
            "Pipe, " + units.lengthUnit(),
            "Set-ups");
    for (SpotComparison s : plan.comparison()) {
      table.row(
          s.spot().name(),
          storey(s.spot().floor()),
          String.format(Locale.ROOT, "%,.0f", s.cost()),
          Integer.toString(s.uncovered()),
          units.show(s.longestFlexible()),
          units.show(s.pipe()),
          Integer.toString(s.setUps()));
    }
    table.print(out);
    for (SpotComparison s : plan.comparison()) {
      say(s.spot().name() + " breaks", s.breaks());
      say(s.spot().name() + " needs", s.needs());
    }
    out.println();
  }

  private void say(String what, List<String> sentences) {
    if (!sentences.isEmpty()) {
      out.println(Plain.text(what + ": " + String.join("; ", sentences)));
    }
  }

  private void hardware() {
    if (plan.hardware().isEmpty()) {
      return;
    }
    out.println("To load:");
    for (Hardware h : plan.hardware()) {
      String size = h.size().metres() == 0 ? "" : " of " + show(h.size());
      out.printf("  %4d  %s%s%n", h.count(), h.item().words(), size);
    }
    out.println();
  }

  private void outOfReach() {
    List<CellRow> missed =
        CellRow.of(plan).stream().filter(r -> r.result() instanceof NoRoute).toList();
    if (!missed.isEmpty()) {
      out.printf("Places of work that no line reaches: %d%n", missed.size());
    }
    if (!plan.groundless().isEmpty()) {
      out.printf("Pieces of steel without a floor under them: %d%n", plan.groundless().size());
    }
  }

  private String show(Length length) {
    return units.show(length) + " " + units.lengthUnit();
  }

  private String storey(int floor) {
    return plan.floors().get(floor).outline().storey();
  }
}
