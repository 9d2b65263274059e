package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.cli.line.LineResult;
import org.coatrun.cli.line.LineWork;
import org.coatrun.geometry.exposure.ExposureOptions;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.shared.bid.Bid;
import org.coatrun.shared.bid.BidAssembly;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.surface.Surfaces;

/**
 * From models and job to a line: read, measured, bid on and planned once.
 *
 * @param findings of everything that was done, sorted
 */
record LineRun(Takeoff takeoff, Optional<Bid> bid, LineResult line, List<Finding> findings) {

  LineRun {
    findings = findings.stream().distinct().sorted().toList();
  }

  /**
   * Does it all.
   *
   * @throws CommandFailure where a file cannot be read, or the job does not fit the building
   */
  static LineRun of(ModelOptions models, Optional<JobFolder> job, PrintWriter err)
      throws CommandFailure {
    Building building = models.read(Progress.on(err));
    Takeoff takeoff = TakeoffAssembly.assemble(building, measure(building, job, err));
    Optional<Bid> bid = job.map(j -> BidAssembly.of(takeoff, j.job(), j.listings()));
    return of(takeoff, bid, job.map(JobFolder::job).orElseGet(Job::defaults), err);
  }

  /** Plans the line of a takeoff that stands. */
  static LineRun of(Takeoff takeoff, Optional<Bid> bid, Job job, PrintWriter err)
      throws CommandFailure {
    Progress progress = Progress.on(err);
    progress.at("Planning the line", 0);
    try {
      LineWork work =
          bid.map(b -> LineWork.of(takeoff, b)).orElseGet(() -> LineWork.nominal(takeoff));
      LineResult line = LineResult.of(takeoff, work, job);
      var findings = new ArrayList<Finding>(takeoff.findings());
      bid.ifPresent(b -> findings.addAll(b.findings()));
      findings.addAll(line.findings());
      return new LineRun(takeoff, bid, line, findings);
    } finally {
      progress.done();
    }
  }

  private static Surfaces measure(Building building, Optional<JobFolder> job, PrintWriter err) {
    ExposureOptions exposure =
        job.map(j -> j.job().exposure())
            .map(e -> new ExposureOptions(e.contactGap(), e.holeThreshold()))
            .orElseGet(ExposureOptions::defaults);
    Progress progress = Progress.on(err);
    try {
      return SurfaceTakeoff.measure(
          building,
          SurfaceOptions.defaults().withExposure(exposure),
          (done, total) -> progress.at("Measuring", total == 0 ? 1 : (double) done / total));
    } finally {
      progress.done();
    }
  }
}
