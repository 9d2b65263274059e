package org.coatrun.cli.line;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coatrun.cli.console.Plain;
import org.coatrun.cli.report.TextTable;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Pressure;

/** The engineer's check of each floor on the screen. */
public final class LiftScreen {

  private final PrintWriter out;
  private final LineResult result;
  private final UnitSystem units;

  private LiftScreen(PrintWriter out, LineResult result, UnitSystem units) {
    this.out = out;
    this.result = result;
    this.units = units;
  }

  /** Prints the checks in {@code units}; findings and cautions are the caller's. */
  public static void print(PrintWriter out, LineResult result, UnitSystem units) {
    var screen = new LiftScreen(out, result, units);
    screen.transfer();
    screen.reasons();
    screen.utilities();
    screen.supply();
    screen.rooms();
  }

  private void transfer() {
    String unit = units.lengthUnit();
    TextTable table =
        new TextTable(
            1,
            "Floor",
            "Rise, " + unit,
            "Storeys",
            "Flexible, " + unit,
            "Pipe, " + unit,
            "Bends",
            "Equivalent, " + unit,
            "Standpipe");
    for (FloorPlan f : result.plan().floors()) {
      if (f.check().isEmpty()) {
        String why = f.cells().isEmpty() ? "no work" : "no line";
        table.row(f.outline().storey(), "", "", "", "", "", "", why);
        continue;
      }
      FloorCheck c = f.check().get();
      table.row(
          f.outline().storey(),
          units.show(c.rise()),
          Integer.toString(c.storeys()),
          units.show(c.flexible()),
          units.show(c.pipe()),
          Integer.toString(c.bends()),
          units.show(c.equivalent().quick()) + " / " + units.show(c.equivalent().byBends()),
          c.standpipe().isEmpty() ? "no" : "required");
    }
    table.print(out);
    out.println();
  }

  private void reasons() {
    var lines = new ArrayList<String>();
    for (FloorPlan f : result.plan().floors()) {
      f.check()
          .ifPresent(
              c -> {
                c.standpipe()
                    .forEach(why -> lines.add(f.outline().storey() + ": standpipe: " + why));
                c.notes().forEach(note -> lines.add(f.outline().storey() + ": " + note));
              });
    }
    lines.forEach(line -> out.println(Plain.text(line)));
    out.println("Equivalent length by two published rules (quick / by bends): an indication only.");
    out.println();
  }

  private void utilities() {
    TextTable table =
        new TextTable(
            1,
            "Floor",
            "At the pump, " + pressureUnit(),
            "Booster",
            "Feeder drop",
            "Air",
            "Bags",
            "Fit in storage");
    for (FloorPlan f : result.plan().floors()) {
      if (f.check().isEmpty()) {
        continue;
      }
      FloorCheck c = f.check().get();
      FloorBags bags = FloorBags.of(result.plan(), f, result.job());
      table.row(
          f.outline().storey(),
          show(c.waterAtPump()),
          c.booster().map(b -> b ? "needed" : "no").orElse("not known"),
          c.feederDrop().isPresent()
              ? String.format(Locale.ROOT, "%.1f %%", c.feederDrop().getAsDouble())
              : "not known",
          words().air(allAir(c)),
          Long.toString(bags.needed()),
          bags.room().isEmpty() ? "not stated" : bags.fit() ? "yes" : "no");
    }
    table.print(out);
    out.println();
  }

  private void supply() {
    var job = result.job();
    boolean booster =
        result.plan().floors().stream()
            .anyMatch(f -> f.check().flatMap(FloorCheck::booster).orElse(false));
    out.println(
        String.format(
            Locale.ROOT,
            "Water: %s %s at the nozzle with lift and friction%s.",
            show(job.water().atNozzle()),
            pressureUnit(),
            booster
                ? "; booster pump with a tank of " + words().water(job.water().boosterTank())
                : ""));
    if (job.water().supplyPressure().isEmpty()) {
      out.println(
          "Measure the supply's pressure and state it under water, supply-pressure: until then no"
              + " one knows whether a booster is needed.");
    }
    if (job.power().at().isEmpty() && job.power().run().isEmpty()) {
      out.println("State where power is, or the feeder's run, under power: its drop is not known.");
    }
    out.println();
  }

  private void rooms() {
    out.println(
        String.format(
            Locale.ROOT,
            "Air to be moved until cured, %.0f changes an hour:",
            result.request().utilities().airChanges()));
    TextTable table = new TextTable(2, "Floor", "Room", "Air");
    for (FloorPlan f : result.plan().floors()) {
      List<FloorCheck.Fan> fans = f.check().map(FloorCheck::fans).orElse(List.of());
      for (FloorCheck.Fan fan : fans) {
        table.row(f.outline().storey(), fan.space(), words().air(fan.air()));
      }
    }
    table.print(out);
    out.println();
  }

  private static FlowRate allAir(FloorCheck check) {
    return FlowRate.ofCubicMetresPerSecond(
        check.fans().stream().mapToDouble(a -> a.air().cubicMetresPerSecond()).sum());
  }

  private Wording words() {
    return result.request().wording();
  }

  private String pressureUnit() {
    return units == UnitSystem.US ? "psi" : "kPa";
  }

  private String show(Pressure p) {
    return String.format(Locale.ROOT, "%,.0f", units == UnitSystem.US ? p.psi() : p.kilopascals());
  }
}
