package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.cli.line.LineResult;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.page.FacesJson;
import org.coatrun.cli.page.LineChoice;
import org.coatrun.cli.page.PageBodies;
import org.coatrun.cli.page.PageLimits;
import org.coatrun.cli.page.TakeoffPage;
import org.coatrun.cli.report.Results;
import org.coatrun.cli.report.TakeoffFiles;
import org.coatrun.cli.report.TakeoffTables;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.cli.workbook.TakeoffWorkbook;
import org.coatrun.geometry.exposure.ExposureOptions;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.surface.Surfaces;

/**
 * Models read, measured and bid on once, for all commands that need a takeoff.
 *
 * @param bodies for the page; none where it is not written
 * @param units of the screen
 */
record TakeoffRun(
    Optional<JobFolder> folder, Results results, PageBodies bodies, UnitSystem units) {

  /**
   * Reads, measures and bids.
   *
   * @param drawn whether the page will be written
   * @throws CommandFailure where a file cannot be read as a model
   */
  static TakeoffRun of(
      ModelOptions models, Optional<JobFolder> folder, boolean drawn, PrintWriter err)
      throws CommandFailure {
    Building building = JobOptions.applied(folder, models.read(Progress.on(err)));
    PageBodies bodies = new PageBodies();
    SurfaceOptions options = options(folder);
    if (drawn) {
      options = options.withMeshes(bodies);
    }
    Surfaces surfaces = measure(building, options, err);
    bodies.begin();
    Takeoff takeoff = TakeoffAssembly.assemble(building, surfaces);
    Results results = folder.map(j -> Results.of(takeoff, j)).orElseGet(() -> Results.of(takeoff));
    UnitSystem units =
        folder.map(j -> models.units(j.job().units())).orElseGet(() -> models.units(building));
    return new TakeoffRun(folder, results, bodies, units);
  }

  /** When faces count as covered and holes as small, by the job or by default. */
  private static SurfaceOptions options(Optional<JobFolder> folder) {
    return folder
        .map(JobFolder::job)
        .map(j -> SurfaceOptions.defaults().withExposure(ExposureOptions.of(j.exposure())))
        .orElseGet(SurfaceOptions::defaults);
  }

  private static Surfaces measure(Building building, SurfaceOptions options, PrintWriter err) {
    Progress progress = Progress.on(err);
    try {
      return SurfaceTakeoff.measure(
          building,
          options,
          (done, total) -> progress.at("Measuring", total == 0 ? 1 : (double) done / total));
    } finally {
      progress.done();
    }
  }

  Building building() {
    return results.takeoff().building();
  }

  /** The job, or one that states nothing. */
  Job job() {
    return folder.map(JobFolder::job).orElseGet(Job::defaults);
  }

  /** The same with more findings and more of what the numbers mean. */
  TakeoffRun with(Results other) {
    return new TakeoffRun(folder, other, bodies, units);
  }

  /** Writes the files of the takeoff, and the page. */
  void write(OutputFolder to) {
    write(to, Optional.empty());
  }

  /** The same; the page shows the line too, where there is one. */
  void write(OutputFolder to, Optional<LineResult> line) {
    // What takes longest is begun first.
    to.writeBytes("report.html", out -> out.write(page(line)));
    TakeoffTables tables = TakeoffTables.of(results);
    TakeoffWorkbook.write(to, results, tables);
    TakeoffFiles.json(
        to, results, tables, json -> FacesJson.write(json, results.takeoff(), bodies));
    TakeoffFiles.lists(to, results, tables);
  }

  private byte[] page(Optional<LineResult> line) {
    String shown = units.name().toLowerCase(Locale.ROOT);
    return line.map(
            l ->
                TakeoffPage.html(
                    results,
                    bodies,
                    PageLimits.DEFAULT,
                    shown,
                    l.request(),
                    LineChoice.of(l.planner(), l.plan())))
        .orElseGet(() -> TakeoffPage.html(results, bodies, PageLimits.DEFAULT, shown));
  }

  int unresolved() {
    Takeoff takeoff = results.takeoff();
    return takeoff.memberTotals().unresolved() + takeoff.deckTotals().unresolved();
  }
}
