package org.coatrun.cli.drawing;

import java.nio.file.Path;
import java.util.List;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.units.Length;

/** Writes drawings of the sample buildings into a folder, to be looked at; not a test. */
final class DrawingSamples {

  private DrawingSamples() {}

  public static void main(String[] args) throws CommandFailure {
    Path folder = Path.of(args[0]);
    write(folder.resolve("hall"), "Grain hall", UnitSystem.SI, SampleLines.hall());
    write(folder.resolve("office"), "Quayside office", UnitSystem.US, SampleLines.office(4));
    write(folder.resolve("ell"), "School <annex> & яхты 工場", UnitSystem.SI, SampleLines.ell());
    LineLimits tight = LineLimits.commonPractice().withFlexible(Length.ofFeet(110));
    write(
        folder.resolve("tight"),
        "Short of hose",
        UnitSystem.US,
        SampleLines.ell().withLimits(tight).withRisers(List.of(), false));
    write(folder.resolve("tower"), "Tower", UnitSystem.US, SampleLines.tower(40));
  }

  private static void write(Path folder, String building, UnitSystem units, LineRequest request)
      throws CommandFailure {
    long start = System.nanoTime();
    DrawingJob job = SampleLines.job(building, units, request);
    long planned = System.nanoTime();
    try (OutputFolder out = OutputFolder.open(folder)) {
      Drawings.write(out, job);
      out.publish();
    }
    System.out.printf(
        "%s: planned in %.1f s, drawn in %.1f s%n",
        building, (planned - start) / 1e9, (System.nanoTime() - planned) / 1e9);
  }
}
