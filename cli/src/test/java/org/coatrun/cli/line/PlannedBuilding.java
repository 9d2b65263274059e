package org.coatrun.cli.line;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.model.Building;
import org.coatrun.testmodels.GenerateModels;

/** Buildings of the test models with a line, read, measured and planned once for all tests. */
enum PlannedBuilding {
  HALL("site: {machine-spots: [{name: dock, at: [94 m, 38 m]}]}\n"),
  /** With its own job file. */
  DEMONSTRATION(""),
  L_SHAPED(""),
  /** Six storeys, of which the machine lifts to four; it may move once. */
  TOWER("machine: {lift-rating: 60 ft}\nsite: {positions: 2}\n", 6),
  /** The same with one position: floors are left out. */
  TOWER_OF_ONE_POSITION("machine: {lift-rating: 60 ft}\n", 6),
  /** With so little hose that not even pipe brings it everywhere. */
  L_SHAPED_SHORT_OF_HOSE(
      """
      line: {flexible-hose: 31 ft}
      site: {machine-spots: [{name: dock, at: [19 m, 3 m]}]}
      """);

  private static final Map<PlannedBuilding, LineResult> PLANNED = new ConcurrentHashMap<>();

  private final String job;

  /** Zero for as many as the model has without being told. */
  private final int storeys;

  PlannedBuilding(String job) {
    this(job, 0);
  }

  PlannedBuilding(String job, int storeys) {
    this.job = job;
    this.storeys = storeys;
  }

  /** Planned at the first call. */
  LineResult result() {
    return PLANNED.computeIfAbsent(this, PlannedBuilding::planned);
  }

  LinePlan plan() {
    return result().plan();
  }

  LineRequest request() {
    return result().request();
  }

  private LineResult planned() {
    try {
      Takeoff takeoff = takeoff(model());
      Path own = Path.of("..", "test-models", "harbour-office.job.yaml");
      Job read = Job.parse("job.yaml", this == DEMONSTRATION ? Files.readString(own) : job);
      return LineResult.of(takeoff, LineWork.nominal(takeoff), read, UnitSystem.US, List.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (CommandFailure e) {
      throw new IllegalStateException(e);
    }
  }

  private static Takeoff takeoff(Path file) {
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
    return TakeoffAssembly.assemble(
        building, SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), (done, total) -> {}));
  }

  private Path model() throws IOException {
    if (this == DEMONSTRATION) {
      return Path.of("..", "test-models", "harbour-office.ifc");
    }
    String scenario =
        name().startsWith("HALL") ? "hall" : name().startsWith("TOWER") ? "tower" : "l-shaped";
    Path file = Files.createTempDirectory("planned").resolve(scenario + ".ifc");
    file.toFile().deleteOnExit();
    file.getParent().toFile().deleteOnExit();
    var all = new ArrayList<>(List.of(scenario, file.toString()));
    if (storeys > 0) {
      all.addAll(List.of("--storeys", Integer.toString(storeys)));
    }
    GenerateModels.main(all.toArray(String[]::new));
    return file;
  }
}
