package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.job.MachineSpec;
import org.coatrun.shared.rules.MixingWater;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Mass;

/** The pail check on the screen, in both systems of units. */
public final class PailScreen {

  private PailScreen() {}

  /**
   * Prints what a flow into a pail supports.
   *
   * @param seconds that it ran; positive
   * @param ratio of water to dry material by weight; positive
   * @param machine whose rate the water has to bear, where a job states one
   */
  public static void print(
      PrintWriter out,
      FlowRate flow,
      double seconds,
      Mass bag,
      double ratio,
      Optional<MachineSpec> machine) {
    double gallons = flow.gallonsPerMinute() * seconds / 60;
    double litres = flow.litresPerMinute() * seconds / 60;
    double bags = MixingWater.bagsPerHour(flow, ratio, bag);
    line(out, "Water in the pail:  %.2f gal (%.2f L) in %.1f s", gallons, litres, seconds);
    line(
        out,
        "Flow:               %.2f gal/min (%.2f L/min)",
        flow.gallonsPerMinute(),
        flow.litresPerMinute());
    line(
        out,
        "Greatest bag rate:  %.1f bags/h of %.1f lb (%.1f kg each, %.0f kg/h in all)",
        bags,
        bag.pounds(),
        bag.kilograms(),
        bags * bag.kilograms());
    machine.ifPresent(m -> against(out, m, bags));
    out.println();
    line(
        out,
        "Water to dry material is taken as %.2f : 1 by weight; water as 8.34 lb a gallon.",
        ratio);
    out.println("The maker's manual states the ratio of the material in hand, and governs.");
    out.println("Measure with everything else running that draws on the same supply, and measure");
    out.println("again when the supply changes: more bags than this come out dry.");
    out.println(Cautions.SHORT);
  }

  private static void against(PrintWriter out, MachineSpec machine, double bags) {
    double asked = machine.rate() * machine.machines();
    line(
        out,
        "The job's rate:     %.1f bags/h with %d %s; the water %s",
        asked,
        machine.machines(),
        machine.machines() == 1 ? "machine" : "machines",
        asked <= bags
            ? "is enough"
            : String.format(Locale.ROOT, "bears %.0f %% of it", Math.floor(100 * bags / asked)));
  }

  private static void line(PrintWriter out, String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
  }
}
