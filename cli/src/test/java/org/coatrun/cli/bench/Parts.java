package org.coatrun.cli.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.line.LineResult;
import org.coatrun.cli.line.LineWork;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.Results;
import org.coatrun.cli.report.TakeoffFiles;
import org.coatrun.cli.report.TakeoffTables;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.surface.Surfaces;
import org.coatrun.testmodels.scenario.TowerSize;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** The program's steps, each alone, in a warm machine, on towers without connections. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 2)
@Measurement(iterations = 3)
public class Parts {

  /** Sizes that double. */
  @Param({"2", "4", "8", "16"})
  public int storeys;

  private Path folder;
  private Path model;
  private Building building;
  private Takeoff takeoff;

  @Setup
  public void prepare() throws IOException {
    folder = Files.createTempDirectory("parts");
    model = BenchModel.write(folder, "tower", TowerSize.plain(storeys)).file();
    building = reading();
    takeoff = TakeoffAssembly.assemble(building, surfaces());
  }

  @TearDown
  public void leaveNothing() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    }
  }

  @Benchmark
  public Building reading() throws IOException {
    return IfcImport.read(List.of(model), ImportOptions.DEFAULT, ProgressListener.silent());
  }

  @Benchmark
  public Surfaces surfaces() {
    return SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), Progress.silent());
  }

  @Benchmark
  public LineResult siting() throws CommandFailure {
    return LineResult.of(
        takeoff, LineWork.nominal(takeoff), Job.defaults(), UnitSystem.SI, List.of());
  }

  @Benchmark
  public Path report() throws CommandFailure {
    try (OutputFolder out = OutputFolder.open(folder.resolve("results"))) {
      Results results = Results.of(takeoff);
      TakeoffTables tables = TakeoffTables.of(results);
      TakeoffFiles.json(out, results, tables, json -> {});
      TakeoffFiles.lists(out, results, tables);
      out.publish();
    }
    return folder;
  }
}
