package org.coatrun.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.page.TakeoffPage;
import org.coatrun.cli.report.Results;
import org.coatrun.cli.report.TakeoffFiles;
import org.coatrun.cli.report.TakeoffScreen;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.cli.workbook.TakeoffWorkbook;
import org.coatrun.geometry.exposure.ExposureOptions;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.surface.Surfaces;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Accounts for every steel element and deck of a building. */
@Command(
    name = "takeoff",
    header = "Account for every steel element and deck: surfaces, weight, section factor.",
    description = {
      "",
      "Writes members.csv, decks.csv, findings.csv, takeoff.json, the workbook takeoff.xlsx,"
          + " basis.txt and the page report.html, all of them or none, and shows the steel by storey"
          + " and section.",
      "With --job also the hours and thickness of each element with what decided them, and the files"
          + " material.csv, programme.csv and inspection.csv (the field sheet).",
      ""
    })
final class TakeoffCommand extends Subcommand {

  private static final int MOST_DRAWN = 20_000;
  private static final String NOT_DRAWN =
      "report.html is not written for models of more than 20,000 members and decks; the tables are"
          + " complete.";

  @Mixin private ModelOptions models;

  @Mixin private JobOptions jobs;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the results; made where it does not exist.")
  private Path out;

  @Option(names = "--strict", description = "Exit with 5 where an element is unresolved.")
  private boolean strict;

  @Override
  ExitCode run() throws CommandFailure {
    Optional<JobFolder> job = jobs.read();
    try (OutputFolder folder = OutputFolder.open(out)) {
      Building building = JobOptions.applied(job, models.read(Progress.on(err())));
      List<ElementMesh> meshes = Collections.synchronizedList(new ArrayList<>());
      Results results = results(building, measure(building, options(job), meshes), job);
      Takeoff takeoff = results.takeoff();
      TakeoffFiles.write(folder, results);
      TakeoffWorkbook.write(folder, results);
      if (isDrawn(building)) {
        String units = units(building, job).name().toLowerCase(Locale.ROOT);
        folder.write(
            "report.html", w -> w.write(TakeoffPage.html(takeoff, meshes, units, results.basis())));
      } else {
        err().println(NOT_DRAWN);
      }
      folder.publish();
      TakeoffScreen.print(out(), results, units(building, job));
      out().println("Written to " + out);
      out().flush();
      return exitCode(takeoff);
    }
  }

  private static boolean isDrawn(Building building) {
    return building.members().size() + building.decks().size() <= MOST_DRAWN;
  }

  private UnitSystem units(Building building, Optional<JobFolder> job) {
    return job.map(j -> models.units(j.job().units())).orElseGet(() -> models.units(building));
  }

  private static Results results(Building building, Surfaces surfaces, Optional<JobFolder> job) {
    Takeoff takeoff = TakeoffAssembly.assemble(building, surfaces);
    return job.map(j -> Results.of(takeoff, j)).orElseGet(() -> Results.of(takeoff));
  }

  /**
   * When faces count as covered, holes as small, and what deck is like, by the job or by default.
   */
  private static SurfaceOptions options(Optional<JobFolder> job) {
    return job.map(JobFolder::job)
        .map(
            j ->
                SurfaceOptions.defaults()
                    .withExposure(ExposureOptions.of(j.exposure()))
                    .withDeck(j.deck().profile()))
        .orElseGet(SurfaceOptions::defaults);
  }

  private Surfaces measure(Building building, SurfaceOptions given, List<ElementMesh> meshes) {
    SurfaceOptions options = given;
    if (isDrawn(building)) {
      options = options.withMeshes(meshes::add);
    }
    Progress progress = Progress.on(err());
    try {
      return SurfaceTakeoff.measure(
          building,
          options,
          (done, total) -> progress.at("Measuring", total == 0 ? 1 : (double) done / total));
    } finally {
      progress.done();
    }
  }

  private ExitCode exitCode(Takeoff takeoff) {
    ExitCode completeness = ModelOptions.completeness(takeoff.building(), err());
    int unresolved = takeoff.memberTotals().unresolved() + takeoff.deckTotals().unresolved();
    return strict && unresolved > 0 ? ExitCode.PARTIAL : completeness;
  }
}
