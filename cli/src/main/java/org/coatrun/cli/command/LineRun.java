package org.coatrun.cli.command;

import java.io.PrintWriter;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.line.LineResult;
import org.coatrun.cli.line.LineWork;
import org.coatrun.cli.report.Results;

/**
 * A line planned on a takeoff that stands.
 *
 * @param takeoff with the findings and the basis of the line added
 */
record LineRun(TakeoffRun takeoff, LineResult line) {

  /**
   * Cuts the floors and plans the line.
   *
   * @throws CommandFailure where the job does not fit the building
   */
  static LineRun of(TakeoffRun takeoff, PrintWriter err) throws CommandFailure {
    Progress progress = Progress.on(err);
    progress.at("Planning the line", 0);
    try {
      Results results = takeoff.results();
      LineWork work =
          results
              .amounts()
              .map(a -> LineWork.of(results.takeoff(), a.material()))
              .orElseGet(() -> LineWork.nominal(results.takeoff()));
      LineResult line =
          LineResult.of(
              results.takeoff(), work, takeoff.job(), takeoff.units(), results.cautions());
      return new LineRun(takeoff.with(results.with(line.findings(), line.basis())), line);
    } finally {
      progress.done();
    }
  }
}
