package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import org.coatrun.cli.console.Awaited;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.ifcimport.part21.ModelFileException;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.model.Building;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The models that a command reads, and how it shows what it finds. */
final class ModelOptions {

  private final PositionalParamSpec models =
      PositionalParamSpec.builder()
          .arity("1..*")
          .required(true)
          .paramLabel("MODEL")
          .type(List.class)
          .auxiliaryTypes(Path.class)
          .description(
              "IFC files (.ifc, .ifczip) of one building: structure, architecture and others"
                  + " together count as one.")
          .build();

  private final OptionSpec units =
      OptionSpec.builder("--units")
          .paramLabel("us|si")
          .type(UnitSystem.class)
          .description(
              "Units on the screen; as the first model's, if not given. Files are always in SI.")
          .build();

  private final OptionSpec acceptTruncated =
      OptionSpec.builder("--accept-truncated")
          .type(boolean.class)
          .initialValue(false)
          .description("Use a cut-off file as far as it goes, and exit with 5.")
          .build();

  private Optional<Future<Building>> begun = Optional.empty();

  ArgSpec[] args() {
    return new ArgSpec[] {models, units, acceptTruncated};
  }

  /** Begins to read the building beside other work; {@link #read} waits for it. */
  void begin(Progress progress) {
    FutureTask<Building> reading = new FutureTask<>(() -> now(progress));
    Thread thread = new Thread(reading, "reading");
    thread.setDaemon(true);
    thread.start();
    begun = Optional.of(reading);
  }

  /**
   * Reads the building.
   *
   * @param progress where it was not begun before
   * @throws CommandFailure where a file cannot be read as a model
   */
  Building read(Progress progress) throws CommandFailure {
    return begun.isEmpty() ? now(progress) : Awaited.result(begun.get(), "reading");
  }

  private Building now(Progress progress) throws CommandFailure {
    ImportOptions options =
        acceptTruncated.<Boolean>getValue()
            ? ImportOptions.DEFAULT.acceptingTruncated()
            : ImportOptions.DEFAULT;
    try {
      return IfcImport.read(
          models.getValue(), options, (what, done, total) -> progress.at(what, share(done, total)));
    } catch (ModelFileException e) {
      throw new CommandFailure(ExitCode.BAD_INPUT, e.getMessage());
    } finally {
      progress.done();
    }
  }

  /** The units to show {@code building} in. */
  UnitSystem units(Building building) {
    return stated().orElseGet(() -> UnitSystem.usedBy(building));
  }

  /** The units to show results in where the job file names some. */
  UnitSystem units(org.coatrun.shared.job.UnitSystem named) {
    return stated()
        .orElse(named == org.coatrun.shared.job.UnitSystem.US ? UnitSystem.US : UnitSystem.SI);
  }

  private Optional<UnitSystem> stated() {
    return Optional.ofNullable(units.getValue());
  }

  /** Says on {@code err} when only a part of a model was read, and gives the exit code for it. */
  static ExitCode completeness(Building building, PrintWriter err) {
    boolean truncated =
        building.findings().stream().anyMatch(f -> f.code() == FileFinding.TRUNCATED);
    if (truncated) {
      err.println("coatrun: a model is cut off; the numbers cover only what stands before the cut");
      err.flush();
    }
    return truncated ? ExitCode.PARTIAL : ExitCode.OK;
  }

  private static double share(long done, long total) {
    return total <= 0 ? 0 : Math.min(1, (double) done / total);
  }
}
