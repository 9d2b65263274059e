package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.TakeoffScreen;

/** Accounts for every steel element and deck of a building. */
final class TakeoffCommand extends Subcommand {

  private final ModelOptions models = new ModelOptions();

  private final JobOptions jobs = new JobOptions();

  private final ResultOptions results = new ResultOptions();

  private final StrictOption strict = new StrictOption();

  TakeoffCommand() {
    super(
        "takeoff",
        "Account for every steel element and deck: surfaces, weight, section factor.",
        "",
        "Writes members.csv, decks.csv, findings.csv, takeoff.json, the workbook takeoff.xlsx,"
            + " basis.txt and the page report.html, all of them or none, and shows the steel by storey"
            + " and section.",
        "With --job also the hours and thickness of each element with what decided them, and the files"
            + " material.csv, programme.csv and inspection.csv (the field sheet).",
        "");
    takes(models.args());
    takes(jobs.option());
    takes(results.option());
    takes(strict.option());
  }

  @Override
  ExitCode run() throws CommandFailure {
    models.begin(Progress.on(err()));
    var job = jobs.read();
    try (OutputFolder folder = results.open()) {
      TakeoffRun run = TakeoffRun.of(models, job, true, err());
      run.write(folder);
      String screen = text(out -> TakeoffScreen.print(out, run.results(), run.units()));
      folder.publish();
      out().print(screen);
      results.say(out());
      return strict.after(run, err());
    }
  }
}
