package org.coatrun.cli.command;

import java.nio.file.Path;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.TakeoffScreen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the results; made where it does not exist.")
  private Path out;

  @Option(names = "--strict", description = "Exit with 5 where an element is unresolved.")
  private boolean strict;

  @Override
  ExitCode run() throws CommandFailure {
    var job = jobs.read();
    try (OutputFolder folder = OutputFolder.open(out)) {
      TakeoffRun run = TakeoffRun.of(models, job, true, err());
      run.write(folder, err());
      folder.publish();
      TakeoffScreen.print(out(), run.results(), run.units());
      out().println("Written to " + out);
      out().flush();
      ExitCode completeness = ModelOptions.completeness(run.building(), err());
      return strict && run.unresolved() > 0 ? ExitCode.PARTIAL : completeness;
    }
  }
}
