package org.coatrun.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.input.InputText;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.ReadingsFiles;
import org.coatrun.cli.report.ReadingsScreen;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.bid.inspection.FieldSheetReader;
import org.coatrun.shared.bid.inspection.InspectionJudge;
import org.coatrun.shared.bid.inspection.InspectionJudgement;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.yaml.JobFileException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges thickness readings. */
@Command(
    name = "readings",
    header = "Judge thickness readings by the averaging rule and by the 10 %% rule, each apart.",
    description = {
      "",
      "Reads a field sheet that came back: the column 'reading' filled in, with a unit or in that of"
          + " the design; blank where nothing was read. Shows by floor and member what each rule"
          + " says and what to spray again; with --out, writes judged.csv and respray.csv.",
      ""
    })
final class ReadingsCommand extends Subcommand {

  @Parameters(paramLabel = "FILE", description = "Field sheet (.csv) that was filled in.")
  private Path file = Path.of("");

  @Option(
      names = "--job",
      paramLabel = "JOB",
      description = "Job file (.yaml): its units are those of the screen, unless --units is given.")
  private Optional<Path> job = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for the results; made where it does not exist.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--units",
      paramLabel = "us|si",
      description = "Units on the screen; us, if neither this nor a job file says so.")
  private Optional<UnitSystem> units = Optional.empty();

  @Override
  ExitCode run() throws CommandFailure {
    UnitSystem shown = shown();
    String text = InputText.read(file);
    InspectionJudgement judgement = judged(text, shown);
    List<String> cautions = cautions(text);
    if (out.isPresent()) {
      write(out.get(), judgement, cautions);
    }
    ReadingsScreen.print(out(), judgement, shown, cautions);
    out.ifPresent(folder -> out().println("Written to " + folder));
    return ExitCode.OK;
  }

  /** A sheet that is marked as coming from an invented listing marks what is made of it. */
  private static List<String> cautions(String text) {
    return text.contains(Listing.DEMONSTRATION) ? List.of(Listing.DEMONSTRATION) : List.of();
  }

  private static void write(Path folder, InspectionJudgement judgement, List<String> cautions)
      throws CommandFailure {
    try (OutputFolder output = OutputFolder.open(folder)) {
      ReadingsFiles.write(output, judgement, cautions);
      output.publish();
    }
  }

  private InspectionJudgement judged(String text, UnitSystem shown) throws CommandFailure {
    String name = file.toString();
    try {
      return InspectionJudge.judge(name, FieldSheetReader.parse(name, text), shown.forJob());
    } catch (JobFileException e) {
      throw new CommandFailure(ExitCode.BAD_INPUT, e.getMessage());
    }
  }

  private UnitSystem shown() throws CommandFailure {
    if (job.isEmpty()) {
      return units.orElse(UnitSystem.US);
    }
    UnitSystem stated = UnitSystem.of(JobFolder.read(job.get()).job().units());
    return units.orElse(stated);
  }
}
