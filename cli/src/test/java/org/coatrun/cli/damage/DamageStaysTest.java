package org.coatrun.cli.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.coatrun.cli.damage.StepRecords.Way;
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
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Damage to the records of one element changes no row of another that stands apart from it. What
 * tells of the building as a whole may change: a frame without any column is not told into classes,
 * so there are two.
 */
class DamageStaysTest {

  private static final JobFolder JOB =
      new JobFolder(
          Job.parse("job.yaml", "building: {type: I-A, occupancy: B}"),
          List.of(DemonstrationListing.read()),
          Optional.empty());

  /** An element whose own record says nothing has no GlobalId either. */
  private static final String EMPTIED = "";

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Way.class)
  void staysWithAnElementThatSharesNothing(Way way) throws IOException {
    var records = new StepRecords(ApartModel.text());
    Map<String, String> whole = rows(ApartModel.text());
    assertThat(whole).hasSize(ApartModel.ELEMENTS.length);
    for (long element : new long[] {2000, 5000}) {
      Set<Long> owned = records.ownedBy(element);
      assertThat(owned).describedAs("all that is the element's").hasSize(47);
      for (long id : owned) {
        requireSame(records, id, way, whole, Set.of(guid(element), EMPTIED));
      }
    }
  }

  /** What the damage must not reach is told by the text alone: all but what owns the record. */
  private void requireSame(
      StepRecords records, long id, Way way, Map<String, String> whole, Set<String> but)
      throws IOException {
    String said = records.kind(id) + " #" + id + " " + way;
    Map<String, String> expected = new TreeMap<>(whole);
    Map<String, String> rows = rows(records.damaged(id, way));
    expected.keySet().removeAll(but);
    rows.keySet().removeAll(but);
    assertThat(rows.keySet()).describedAs(said).isEqualTo(expected.keySet());
    rows.forEach((guid, row) -> assertThat(row).describedAs(said).isEqualTo(expected.get(guid)));
  }

  private static String guid(long element) {
    return "000000000000000000" + element;
  }

  /** The rows of members.csv and decks.csv by GlobalId, all but the number of the line. */
  private Map<String, String> rows(String model) throws IOException {
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
    for (var table : List.of(TakeoffTables.members(results), TakeoffTables.decks(results))) {
      int guid = table.names().indexOf("guid");
      table.rows().stream().forEach(row -> rows.put(row.get(guid).toString(), row.toString()));
    }
    return rows;
  }
}
