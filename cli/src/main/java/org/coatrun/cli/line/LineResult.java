package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.geometry.floor.FloorCutter;
import org.coatrun.geometry.floor.FloorOptions;
import org.coatrun.geometry.floor.Floors;
import org.coatrun.routing.line.LinePlanner;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * A line as worked out for a building.
 *
 * @param planner that knows the line from the other spots compared, too
 * @param findings of floors, work and line, sorted; those of the takeoff are not among them
 * @param cautions what every output says
 */
public record LineResult(
    Building building,
    Job job,
    LineRequest request,
    LinePlanner planner,
    LinePlan plan,
    List<Finding> findings,
    List<String> cautions) {

  public LineResult {
    findings = findings.stream().distinct().sorted().toList();
    cautions = List.copyOf(cautions);
  }

  /** What the numbers mean, one rule a line. */
  public List<String> basis() {
    return LineBasis.of(this);
  }

  /**
   * Cuts the floors, gathers the work and plans the line.
   *
   * @param units of its sentences
   * @throws CommandFailure where the job file does not fit the building
   */
  public static LineResult of(
      Takeoff takeoff, LineWork work, Job job, UnitSystem units, List<String> cautions)
      throws CommandFailure {
    Building building = takeoff.building();
    Vec3 origin = building.origin();
    Wording words = new Wording(units == UnitSystem.US, new Vec2(origin.x(), origin.y()));
    Floors floors =
        FloorCutter.cut(
            building, takeoff.surfaces().extents().values(), FloorOptions.defaults(), words);
    LineRequest request =
        JobLine.request(job, origin, floors.floors(), work.pieces()).withWording(words);
    LinePlanner planner = LinePlanner.of(request);
    LinePlan plan = planner.plan();
    var findings = new ArrayList<Finding>(floors.findings());
    findings.addAll(work.findings(words));
    findings.addAll(plan.findings());
    return new LineResult(building, job, planner.request(), planner, plan, findings, cautions);
  }
}
