package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.shared.bid.RuleMatch;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.RiserSpot;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.KeepOut;
import org.coatrun.shared.line.LineCosts;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.SiteFacts;
import org.coatrun.shared.line.Utilities;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.rules.MixingWater;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Turns a job file and the floors of a building into a request for a line. */
public final class JobLine {

  private static final int SEARCH = 3000;

  /**
   * The highest floor not above this much over the model's zero is where trucks come, in metres.
   */
  private static final double GROUND = 0.6;

  private final Job job;
  private final Vec3 origin;
  private final List<FloorOutline> floors;

  private JobLine(Job job, Vec3 origin, List<FloorOutline> floors) {
    this.job = job;
    this.origin = origin;
    this.floors = floors;
  }

  /**
   * The request.
   *
   * @param origin what was taken off the model's coordinates; the job file's are the model's own
   * @throws CommandFailure where the job file names a storey that has no floor, with one sentence
   */
  public static LineRequest request(
      Job job, Vec3 origin, List<FloorOutline> floors, List<WorkPiece> work) throws CommandFailure {
    return new JobLine(job, origin, floors).request(work);
  }

  private LineRequest request(List<WorkPiece> work) throws CommandFailure {
    int ground = ground();
    List<MachineSpot> spots = spots();
    return new LineRequest(
        floors,
        keepOuts(),
        risers(),
        true,
        work,
        spots,
        ground,
        site(ground),
        job.line().limits(job.machine()),
        job.line().reach(job.labour()),
        LineCosts.estimates(),
        job.line().stock(),
        utilities(),
        job.site().positions(),
        SEARCH,
        Wording.customary());
  }

  /** Where spots are looked for: the highest floor about the model's zero, else the lowest. */
  private int ground() {
    int ground = 0;
    for (int f = 0; f < floors.size(); f++) {
      if (floors.get(f).elevation().metres() + origin.z() <= GROUND) {
        ground = f;
      }
    }
    return ground;
  }

  private List<MachineSpot> spots() throws CommandFailure {
    var spots = new ArrayList<MachineSpot>();
    for (var s : job.site().machineSpots()) {
      int floor = 0;
      if (s.storey().isPresent()) {
        floor = floor(s.storey().get(), "machine spot " + s.name());
      }
      spots.add(new MachineSpot(s.name(), floor, local(s.at()), 0, List.of()));
    }
    return floors.isEmpty() ? List.of() : spots;
  }

  private List<Riser> risers() throws CommandFailure {
    var risers = new ArrayList<Riser>();
    for (RiserSpot r : job.site().risers()) {
      int from = 0;
      int to = floors.size() - 1;
      if (r.from().isPresent()) {
        from = floor(r.from().get(), "riser " + r.name());
      }
      if (r.to().isPresent()) {
        to = floor(r.to().get(), "riser " + r.name());
      }
      if (to < from) {
        throw refused("riser " + r.name() + " ends below the storey that it begins on");
      }
      risers.add(new Riser(r.name(), Riser.Kind.CHASE, local(r.at()), from, to));
    }
    return floors.isEmpty() ? List.of() : risers;
  }

  private List<KeepOut> keepOuts() throws CommandFailure {
    var keepOuts = new ArrayList<KeepOut>();
    for (var k : job.site().keepOuts()) {
      Region region = new Region(k.zone().stream().map(this::local).toList(), List.of());
      String pattern = k.storey().orElse("*");
      List<FloorOutline> on =
          floors.stream().filter(f -> RuleMatch.like(pattern, f.storey())).toList();
      if (on.isEmpty() && !floors.isEmpty()) {
        throw refused(
            "keep-out "
                + k.name()
                + " names storey '"
                + pattern
                + "', which has no floor"
                + known());
      }
      on.forEach(f -> keepOuts.add(new KeepOut(f.storey(), k.name(), region)));
    }
    return keepOuts;
  }

  private int floor(String storey, String what) throws CommandFailure {
    return IntStream.range(0, floors.size())
        .filter(f -> RuleMatch.like(storey, floors.get(f).storey()))
        .boxed()
        .findFirst()
        .orElseThrow(
            () -> refused(what + " names storey '" + storey + "', which has no floor" + known()));
  }

  private String known() {
    return floors.stream()
        .map(FloorOutline::storey)
        .collect(Collectors.joining(", ", "; floors are ", ""));
  }

  private static CommandFailure refused(String what) {
    return new CommandFailure(ExitCode.BAD_INPUT, "job file, site: " + what);
  }

  private Vec2 local(Vec2 inModel) {
    return new Vec2(inModel.x() - origin.x(), inModel.y() - origin.y());
  }

  private SiteFacts site(int ground) {
    var longer =
        job.machine().roomLength().compareTo(job.machine().roomWidth()) >= 0
            ? job.machine().roomLength()
            : job.machine().roomWidth();
    var shorter =
        job.machine().roomLength().compareTo(job.machine().roomWidth()) >= 0
            ? job.machine().roomWidth()
            : job.machine().roomLength();
    return new SiteFacts(
        floors.isEmpty()
            ? List.of()
            : TruckAccess.along(floors.get(ground), job.site().accessSides()),
        job.power().at().map(this::local),
        job.water().at().map(this::local),
        longer,
        shorter,
        job.site().ground());
  }

  private Utilities utilities() {
    return new Utilities(
        job.water().atNozzle(),
        MixingWater.forBagRate(
            job.machine().rate(), job.material().waterRatio(), job.material().bag()),
        job.water().hose().diameter(),
        job.water().roughness(),
        job.water().supplyPressure(),
        Optional.of(job.power().conductor()),
        job.power().amperes(),
        job.power().volts(),
        job.power().run(),
        job.power().limit().percent(),
        job.air().changes());
  }
}
