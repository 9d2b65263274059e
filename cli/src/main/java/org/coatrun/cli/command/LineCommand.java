package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.line.LineFiles;
import org.coatrun.cli.line.LineScreen;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.CsvTable;
import org.coatrun.cli.report.FindingColumns;
import org.coatrun.cli.report.FindingSummary;
import org.coatrun.cli.report.UnitSystem;

/** Plans where the machine stands and how the material gets to the steel. */
final class LineCommand extends Subcommand {

  private final ModelOptions models = new ModelOptions();

  private final JobOptions jobs = new JobOptions();

  private final ResultOptions results = new ResultOptions();

  LineCommand() {
    super(
        "line",
        "Plan the material line: machine, standpipe, hose, set-ups, hardware, moves.",
        "",
        "Writes line.json, routes.csv, floors.csv, spots.csv, hardware.csv, moves.csv, findings.csv,"
            + " basis.txt and drawings of each floor and of the risers as SVG and PDF, all of them or"
            + " none, and shows machine, risers, floors and the best spots.",
        "Without --job the limits are those of common practice, every member is sprayed at a nominal"
            + " thickness, and places for the machine are looked for.",
        "");
    takes(models.args());
    takes(jobs.option());
    takes(results.option());
  }

  @Override
  ExitCode run() throws CommandFailure {
    models.begin(Progress.on(err()));
    var job = jobs.read();
    try (OutputFolder folder = results.open()) {
      LineRun run = LineRun.of(TakeoffRun.of(models, job, false, err()), err());
      UnitSystem units = run.takeoff().units();
      var findings = run.takeoff().results().takeoff().findings();
      LineFiles.write(folder, run.line(), units);
      folder.write("findings.csv", w -> CsvTable.write(w, FindingColumns.ALL, findings));
      folder.write("basis.txt", w -> LineFiles.basis(w, run.line()));
      folder.publish();
      LineScreen.print(out(), run.line(), units);
      FindingSummary.print(out(), findings);
      out().println();
      Cautions.print(out(), run.line().cautions());
      results.say(out());
      return ModelOptions.completeness(run.takeoff().building(), err());
    }
  }
}
