package org.coatrun.cli.damage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.cli.report.Results;
import org.coatrun.cli.report.TakeoffTables;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.DemonstrationListing;
import org.coatrun.shared.model.Building;

/** The rows of members.csv and decks.csv that a model's text comes to. */
final class MemberRows {

  private static final JobFolder JOB =
      new JobFolder(
          Job.parse("job.yaml", "building: {type: I-A, occupancy: B}"),
          List.of(DemonstrationListing.read()),
          Optional.empty());

  private MemberRows() {}

  /**
   * The rows by GlobalId.
   *
   * @param folder where the text is written to
   */
  static Map<String, String> of(String model, Path folder) throws IOException {
    Path file = folder.resolve("model.ifc");
    Files.writeString(file, model, StandardCharsets.ISO_8859_1);
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
    Takeoff takeoff =
        TakeoffAssembly.assemble(
            building,
            SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), (done, total) -> {}));
    Results results = Results.of(takeoff, JOB);
    Map<String, String> rows = new TreeMap<>();
    TakeoffTables tables = TakeoffTables.of(results);
    for (var table : List.of(tables.members(), tables.decks())) {
      int guid = table.names().indexOf("guid");
      table.rows().forEach(row -> rows.put(row.get(guid).toString(), row.toString()));
    }
    return rows;
  }
}
