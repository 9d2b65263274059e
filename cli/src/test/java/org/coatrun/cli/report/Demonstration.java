package org.coatrun.cli.report;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.geometry.exposure.ExposureOptions;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.DemonstrationListing;
import org.coatrun.shared.model.Building;

/** The demonstration building, taken off once, and its sample job. */
final class Demonstration {

  private static final Path MODELS = Path.of(System.getProperty("coatrun.root"), "test-models");

  private final JobFolder folder;
  private final Takeoff takeoff;

  private Demonstration(JobFolder folder, Takeoff takeoff) {
    this.folder = folder;
    this.takeoff = takeoff;
  }

  static Demonstration read() throws Exception {
    JobFolder folder = JobFolder.read(MODELS.resolve("harbour-office.job.yaml"));
    Building building =
        IfcImport.read(
            List.of(MODELS.resolve("harbour-office.ifc")),
            ImportOptions.DEFAULT,
            (what, done, total) -> {});
    SurfaceOptions options =
        SurfaceOptions.defaults().withExposure(ExposureOptions.of(folder.job().exposure()));
    return new Demonstration(
        folder,
        TakeoffAssembly.assemble(
            building, SurfaceTakeoff.measure(building, options, (done, total) -> {})));
  }

  Takeoff takeoff() {
    return takeoff;
  }

  /** Results by the sample job. */
  Results results() {
    return Results.of(takeoff, folder);
  }

  /** Results by another job with the demonstration listing. */
  Results results(String yaml) {
    return Results.of(
        takeoff,
        new JobFolder(
            Job.parse("job.yaml", yaml), List.of(DemonstrationListing.read()), Optional.empty()));
  }

  /** The sample job's text. */
  static String jobText() throws Exception {
    return Files.readString(MODELS.resolve("harbour-office.job.yaml"));
  }

  /** The line of a member by its mark. */
  MemberLine member(String mark) {
    return takeoff.members().stream()
        .filter(line -> line.identity().mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  /** What was decided for a member by its mark. */
  RatedLine rated(Results results, String mark) {
    return results.rated(member(mark).identity().id()).orElseThrow();
  }
}
