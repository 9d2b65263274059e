package org.coatrun.cli.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.routing.line.LinePlanner;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One floor, one piece of steel and a job file: what is amiss with them is said, and no more. */
class RaisedLineFindingsTest {

  private static final String SOUND =
      "site: {machine-spots: [{name: yard, at: [5 m, 5 m], storey: Level 1}]}\n";
  private static final String CLOSED =
      "site: {keep-outs: [{name: all, zone: [[-500 m, -500 m], [500 m, -500 m], [500 m, 500 m],"
          + " [-500 m, 500 m]]}]}\n";
  private static final Region PLATE = Region.rectangle(0, 0, 30, 20);

  /**
   * A floor, steel and a job with one thing amiss.
   *
   * @param walls that stand on the floor
   * @param steel where the piece stands along x, in metres
   * @param top of the piece over the floor, in metres
   * @param said of it
   */
  record Amiss(
      LineFinding code, List<Region> walls, double steel, double top, String job, String said) {

    static Amiss job(LineFinding code, String more, String said) {
      return new Amiss(code, List.of(), 20, 3, SOUND + more, said);
    }

    LineRequest request() throws CommandFailure {
      var floor =
          new FloorOutline(
              "Level 1",
              Length.ZERO,
              Length.ofMetres(30),
              List.of(PLATE),
              walls,
              List.of(),
              List.of(),
              List.of());
      var piece =
          new WorkPiece(
              "B1",
              "",
              new Vec3(steel, 10, top),
              new Vec3(steel + 4, 10, top),
              Length.ofMetres(0.3),
              Volume.ofCubicMetres(0.2));
      return JobLine.request(Job.parse("job.yaml", job), Vec3.ZERO, List.of(floor), List.of(piece));
    }

    @Override
    public String toString() {
      return code.code() + ": " + said;
    }
  }

  static Stream<Amiss> amiss() {
    return Stream.of(
        new Amiss(LineFinding.NO_FREE_FLOOR, List.of(PLATE), 20, 3, CLOSED, "Level 1"),
        new Amiss(LineFinding.NO_MACHINE_SPOT, List.of(PLATE), 20, 3, CLOSED, "No machine spot"),
        new Amiss(LineFinding.NO_FLOOR_UNDER, List.of(), 90, 3, SOUND, "B1: "),
        new Amiss(LineFinding.NEEDS_SCAFFOLD, List.of(), 20, 25, SOUND, "83 ft over the floor"),
        Amiss.job(LineFinding.OVER_RATING, "machine: {conveying-rating: 20 ft}\n", "over the"),
        Amiss.job(LineFinding.BOOSTER_NEEDED, "water: {supply-pressure: 5 psi}\n", "needed at"),
        Amiss.job(LineFinding.FEEDER_DROP, "power: {run: 5000 ft}\n", "%"));
  }

  private static List<Finding> findings(LineRequest request) {
    return LinePlanner.plan(request).findings();
  }

  @Test
  void aSoundJobHasNone() throws CommandFailure {
    Amiss sound = Amiss.job(LineFinding.OUT_OF_LINE, "", "");
    assertThat(findings(sound.request())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("amiss")
  void whatIsAmissIsSaid(Amiss job) throws CommandFailure {
    assertThat(findings(job.request()))
        .filteredOn(f -> f.code() == job.code())
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.sentence()).contains(job.said()));
  }
}
