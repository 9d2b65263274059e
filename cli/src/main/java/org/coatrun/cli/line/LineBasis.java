package org.coatrun.cli.line;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Proof;
import org.coatrun.shared.line.Utilities;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.units.Length;

/** What the numbers of a line mean, and by which limits and rules it was planned. */
final class LineBasis {

  private LineBasis() {}

  /** One rule a line, with the numbers that were used. */
  static List<String> of(LineResult result) {
    LineRequest request = result.request();
    Wording words = request.wording();
    var lines = new ArrayList<String>();
    lines.add(
        "Floors are the level tops of slabs and decks gathered by height, less openings, walls of"
            + " concrete or masonry, columns, and keep-outs of the job file; light partitions come"
            + " after the spraying.");
    lines.add(
        "Steel is sprayed from the highest floor under its underside, cut into places of work of"
            + " about "
            + words.about(Length.ofFeet(20))
            + ".");
    lines.add(
        "Board feet are those in place of the material bill, fill of flutes, attachments and sprayed"
            + " deck included; without a job file, exposed steel at a nominal "
            + words.width(LineWork.NOMINAL)
            + ".");
    limits(request.limits(), words, lines);
    ground(request, lines);
    positions(request, lines);
    lines.add(
        "Hose runs along the shortest way over the floor; slack and bends are added to it. Pipe"
            + " runs along walls and column lines.");
    lines.add(
        "Equivalent lengths follow two published rules that disagree: an indication, never a"
            + " proof.");
    utilities(request.utilities(), words, lines);
    lines.add("bags: at the theoretical yield, nothing lost; storage_bags: what the room holds.");
    lines.add(
        "Costs weigh machine, riser, outlet, pipe, hose, haul and loss of yield; they are estimates"
            + " of our own, and serve the choice alone.");
    proof(result.plan().proof(), lines);
    lines.add(
        "Places are in metres in the coordinates of the model. Files are in SI units; numbers are"
            + " rounded to six decimals, volumes to nine, halves to even.");
    return List.copyOf(lines);
  }

  private static void limits(LineLimits l, Wording words, List<String> lines) {
    lines.add(
        say(
            "Limits: %s of flexible hose in all, whip of %s in it; standpipe over %s of rise or %d"
                + " storeys, or where hose alone would be longer (common practice where the job"
                + " file does not say otherwise).",
            words.about(l.flexible()),
            words.about(l.whip()),
            words.length(l.hoseRise()),
            l.hoseStoreys()));
    lines.add(
        say(
            "Hose is laid %.0f %% longer than taut, bent to %s at least, and kept %s from walls,"
                + " columns and edges.",
            100 * l.slack(), words.length(l.bendRadius()), words.length(l.margin())));
  }

  private static void ground(LineRequest request, List<String> lines) {
    if (request.floors().stream().anyMatch(f -> !f.ground().isEmpty())) {
      lines.add(
          "The model draws no ground with room for the machine: level ground "
              + request.wording().about(request.site().ground())
              + " wide was assumed around the slab of the machine's floor; keep-outs of the job file"
              + " hold there.");
    }
  }

  private static void positions(LineRequest request, List<String> lines) {
    if (request.mostMachines() > 1 && request.spots().isEmpty()) {
      lines.add(
          "Of several machine positions each after the first stands on the first floor that the one"
              + " below cannot lift to, and serves that floor and those above; bags come up by hoist.");
    }
  }

  private static void utilities(Utilities u, Wording words, List<String> lines) {
    lines.add(
        say(
            "Pressure at the pump: %s at the nozzle, %s of lift, and friction of %s in %s hose by"
                + " Hazen-Williams, C %.0f.",
            words.pressure(u.nozzle()),
            words.us() ? "0.433 psi for each foot" : "9.8 kPa for each metre",
            words.water(u.waterFlow()),
            words.width(u.waterHose()),
            u.roughness()));
    lines.add(
        say(
            "Voltage drop: three-phase, %.0f A at %.0f V, resistance of the conductor by NEC chapter"
                + " 9; %.0f %% is allowed.",
            u.amperes(), u.volts(), u.feederPercent()));
    lines.add(
        say(
            "Air: %.0f changes an hour of each room, or of the floor's height by its plate where the"
                + " model has no rooms.",
            u.airChanges()));
  }

  private static void proof(Proof p, List<String> lines) {
    lines.add(
        p.optimal()
            ? say(
                "The plan is proven best among the spots, risers and outlets looked at: cost %.0f,"
                    + " bound %.0f.",
                p.cost(), p.bound())
            : say(
                "The search stopped before the plan was proven best: cost %.0f, bound %.0f, at most"
                    + " %.1f %% from the best.",
                p.cost(), p.bound(), 100 * p.gap()));
  }

  private static String say(String sentence, Object... with) {
    return String.format(Locale.ROOT, sentence, with);
  }

  static void write(Writer writer, LineResult result) throws IOException {
    writer.write("What the numbers of the line mean\n\n");
    for (String line : of(result)) {
      writer.write("- " + line + "\n");
    }
    writer.write("\nCautions\n\n");
    for (String line : result.cautions()) {
      writer.write("- " + line + "\n");
    }
  }
}
