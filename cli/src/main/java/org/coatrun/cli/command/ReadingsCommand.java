package org.coatrun.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.input.InputText;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.ReadingsFiles;
import org.coatrun.cli.report.ReadingsScreen;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.bid.inspection.FieldSheetReader;
import org.coatrun.shared.bid.inspection.InspectionJudge;
import org.coatrun.shared.bid.inspection.InspectionJudgement;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.yaml.JobFileException;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Judges thickness readings. */
final class ReadingsCommand extends Subcommand {

  private final PositionalParamSpec file =
      PositionalParamSpec.builder()
          .index("0")
          .arity("1")
          .required(true)
          .paramLabel("FILE")
          .type(Path.class)
          .description("Field sheet (.csv) that was filled in.")
          .build();

  private final JobOptions jobs =
      new JobOptions(
          "JOB", "Job file (.yaml): its units are those of the screen, unless --units is given.");

  private final OptionSpec out =
      OptionSpec.builder("--out")
          .paramLabel("DIR")
          .type(Path.class)
          .description("Folder for the results; made where it does not exist.")
          .build();

  private final OptionSpec units =
      OptionSpec.builder("--units")
          .paramLabel("us|si")
          .type(UnitSystem.class)
          .description("Units on the screen; us, if neither this nor a job file says so.")
          .build();

  ReadingsCommand() {
    super(
        "readings",
        "Judge thickness readings by the averaging rule and by the 10 %% rule, each apart.",
        "",
        "Reads a field sheet that came back: the column 'reading' filled in, with a unit or in that of"
            + " the design; blank where nothing was read. Shows by floor and member what each rule"
            + " says and what to spray again; with --out, writes judged.csv and respray.csv.",
        "");
    takes(file, jobs.option(), out, units);
  }

  @Override
  ExitCode run() throws CommandFailure {
    UnitSystem shown = shown();
    String text = InputText.read(file.getValue());
    InspectionJudgement judgement = judged(text, shown);
    List<String> cautions = cautions(text);
    Path folder = out.getValue();
    if (folder != null) {
      write(folder, judgement, cautions);
    }
    ReadingsScreen.print(out(), judgement, shown, cautions);
    if (folder != null) {
      out().println("Written to " + folder);
    }
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
    String name = file.<Path>getValue().toString();
    try {
      return InspectionJudge.judge(name, FieldSheetReader.parse(name, text), shown.forJob());
    } catch (JobFileException e) {
      throw new CommandFailure(ExitCode.BAD_INPUT, e.getMessage());
    }
  }

  private UnitSystem shown() throws CommandFailure {
    UnitSystem stated = jobs.read().map(j -> UnitSystem.of(j.job().units())).orElse(UnitSystem.US);
    return Optional.<UnitSystem>ofNullable(units.getValue()).orElse(stated);
  }
}
