package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.TakeoffScreen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Accounts for every steel element and deck of a building. */
@Command(
    name = "takeoff",
    header = "Account for every steel element and deck: surfaces, weight, section factor.",
    description = {
      "",
      "Writes members.csv, decks.csv, findings.csv, takeoff.json, the workbook takeoff.xlsx,"
          + " basis.txt and the page report.html, all of them or none, and shows the steel by storey"
          + " and section.",
      "With --job also the hours and thickness of each element with what decided them, and the files"
          + " material.csv, programme.csv and inspection.csv (the field sheet).",
      ""
    })
final class TakeoffCommand extends Subcommand {

  @Mixin private ModelOptions models;

  @Mixin private JobOptions jobs;

  @Mixin private ResultOptions results;

  @Mixin private StrictOption strict;

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
