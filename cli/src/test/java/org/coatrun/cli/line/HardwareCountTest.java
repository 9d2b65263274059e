package org.coatrun.cli.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.Move;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Hardware counted anew from the lines, piece by piece, by the sizes of common practice: hose of 25
 * and 50 ft, pipe and clamps of 10 ft, a whip of 25 ft, a pole gun of 12 ft at most in sections of
 * 3 ft, a bend at either end of a rise and at each turn of pipe, a brace on each floor.
 */
class HardwareCountTest {

  private static final double FOOT = 0.3048;
  private static final double NOISE = 1e-6;

  /** Pieces by kind, those of hose by their length in feet. */
  private static final class Count extends TreeMap<String, Integer> {
    private static final long serialVersionUID = 1;

    void add(String what, int n) {
      if (n > 0) {
        merge(what, n, Integer::sum);
      }
    }

    void most(Count other) {
      other.forEach((what, n) -> merge(what, n, Math::max));
    }

    /** A coupling for each piece, which joins it to the one before it. */
    Count coupled() {
      var all = new Count();
      all.putAll(this);
      all.add("hose coupling", getOrDefault("hose 50", 0) + getOrDefault("hose 25", 0));
      all.add("pipe coupling", getOrDefault("pipe", 0) + getOrDefault("bend", 0));
      return all;
    }
  }

  @ParameterizedTest
  @EnumSource
  void eachSetUpLoadsWhatItsLongestLineIsMadeOf(PlannedBuilding building) {
    LinePlan plan = building.plan();
    for (SetUp s : setUps(plan)) {
      Route line = longest(plan, s);
      Count count = count(line.legs(), passed(plan, s));
      poleGun(building, s, count);
      assertThat(listed(s.hardware()))
          .as("%s, set-up %d", building, s.number())
          .isEqualTo(count.coupled());
      // The line is whole: no gap, and no section that could be left at home.
      double hose = sum(line, l -> l.kind().flexible() && l.kind() != Leg.Kind.WHIP);
      double sections =
          50 * FOOT * count.getOrDefault("hose 50", 0)
              + 25 * FOOT * count.getOrDefault("hose 25", 0);
      long runs =
          line.legs().stream().filter(l -> l.kind().flexible() && l.laid().metres() > NOISE).count()
              - 1;
      assertThat(sections).isBetween(hose - NOISE, hose + runs * 25 * FOOT + NOISE);
    }
  }

  /** What stands stays, riser by riser; of what moves, the most that one set-up asks for. */
  @ParameterizedTest
  @EnumSource
  void theJobLoadsEachRiserAndTheMostThatMoves(PlannedBuilding building) {
    LinePlan plan = building.plan();
    Map<List<Object>, Count> standing = new HashMap<>();
    var moving = new Count();
    for (SetUp s : setUps(plan)) {
      List<Leg> legs = longest(plan, s).legs();
      int rise = 0;
      for (int i = 0; i < legs.size(); i++) {
        rise = legs.get(i).kind().rising() ? i + 1 : rise;
      }
      Count own = count(legs.subList(rise, legs.size()), 0);
      poleGun(building, s, own);
      moving.most(own);
      boolean up = s.floor() > machineFloor(plan, s);
      List<Object> riser =
          List.of(s.machine(), s.riser().orElse(""), up, legs.subList(0, Math.max(0, rise - 1)));
      standing
          .computeIfAbsent(riser, k -> new Count())
          .most(count(legs.subList(0, rise), passed(plan, s)));
    }
    var job = new Count();
    moving.forEach(job::add);
    standing.values().forEach(c -> c.forEach(job::add));
    assertThat(listed(plan.hardware())).as(building.name()).isEqualTo(job.coupled());
    if (!setUps(plan).isEmpty()) {
      assertThat(job).containsEntry("whip 25", 1).containsEntry("reducer", 1);
    }
  }

  @ParameterizedTest
  @EnumSource
  void movesFollowTheSetUps(PlannedBuilding building) {
    LinePlan plan = building.plan();
    var expected = new ArrayList<Move.Kind>();
    String machine = "";
    String riser = "";
    for (SetUp s : setUps(plan)) {
      if (!s.machine().equals(machine)) {
        expected.add(Move.Kind.SET_MACHINE);
      }
      String own = s.machine() + s.riser().orElse("");
      if (s.riser().isPresent() && !own.equals(riser)) {
        expected.add(Move.Kind.RAISE_RISER);
      }
      expected.add(Move.Kind.SET_OUTLET);
      expected.add(Move.Kind.SPRAY);
      machine = s.machine();
      riser = own;
    }
    assertThat(plan.moves()).extracting(Move::kind).isEqualTo(expected);
    for (int i = 0; i < plan.moves().size(); i++) {
      assertThat(plan.moves().get(i).number()).isEqualTo(i + 1);
    }
    List<SetUp> order = setUps(plan);
    List<Move> sprays = plan.moves().stream().filter(m -> m.kind() == Move.Kind.SPRAY).toList();
    for (int i = 0; i < order.size(); i++) {
      SetUp s = order.get(i);
      assertThat(sprays.get(i).sentence())
          .startsWith(plan.floors().get(s.floor()).outline().storey() + ":")
          .contains("in " + s.cells().size() + " places from outlet " + (i + 1));
    }
    assertThat(plan.moves())
        .filteredOn(m -> m.kind() == Move.Kind.SET_MACHINE)
        .hasSameSizeAs(plan.machines());
  }

  private static Count count(List<Leg> legs, int floorsPassed) {
    var count = new Count();
    for (Leg leg : legs) {
      switch (leg.kind()) {
        case HOSE, RISER_HOSE -> {
          int quarters = pieces(leg, 25);
          count.add("hose 50", quarters / 2);
          count.add("hose 25", quarters % 2);
        }
        case PIPE -> {
          count.add("pipe", pieces(leg, 10));
          count.add("clamp", pieces(leg, 10));
          count.add("bend", (int) leg.turns().stream().filter(t -> t > Math.toRadians(5)).count());
        }
        case RISER_PIPE -> {
          count.add("pipe", pieces(leg, 10));
          count.add("clamp", floorsPassed);
          count.add("bend", 2);
          count.add("clean-out", 1);
        }
        case WHIP -> {
          count.add("whip 25", 1);
          count.add("reducer", 1);
        }
      }
    }
    return count;
  }

  private static void poleGun(PlannedBuilding building, SetUp s, Count count) {
    double highest =
        s.cells().stream()
            .map(c -> building.plan().cells().get(c))
            .filter(c -> c.access() == Access.POLE_GUN)
            .mapToDouble(c -> c.highest().feet())
            .max()
            .orElse(0);
    if (highest > 0) {
      double gun = highest - building.request().reach().poleGunHold().feet();
      assertThat(gun).isBetween(0.0, 12 + NOISE);
      count.add("pole gun section", (int) Math.ceil(gun / 3 - NOISE));
      count.add("pole gun tip", 1);
    }
  }

  private static int pieces(Leg leg, double feet) {
    return (int) Math.ceil(leg.laid().feet() / feet - NOISE);
  }

  private static Count listed(List<Hardware> hardware) {
    var count = new Count();
    for (Hardware h : hardware) {
      count.add(name(h), h.count());
    }
    return count;
  }

  private static String name(Hardware h) {
    return switch (h.item()) {
      case TRANSFER_HOSE -> "hose " + Math.round(h.size().feet());
      case WHIP_HOSE -> "whip " + Math.round(h.size().feet());
      case STANDPIPE -> "pipe";
      case PIPE_BEND -> "bend";
      case PIPE_CLAMP -> "clamp";
      case REDUCER -> "reducer";
      case POLE_GUN_TIP -> "pole gun tip";
      case HOSE_COUPLING, PIPE_COUPLING, CLEAN_OUT, POLE_GUN_SECTION -> h.item().words();
    };
  }

  private static int passed(LinePlan plan, SetUp s) {
    return Math.abs(s.floor() - machineFloor(plan, s));
  }

  private static int machineFloor(LinePlan plan, SetUp s) {
    return plan.machines().stream()
        .filter(m -> m.name().equals(s.machine()))
        .findFirst()
        .orElseThrow()
        .floor();
  }

  private static Route longest(LinePlan plan, SetUp s) {
    return s.cells().stream()
        .map(c -> (Route) plan.routes().get(c))
        .max(Comparator.comparingDouble(r -> r.flexible().metres()))
        .orElseThrow();
  }

  private static double sum(Route line, Predicate<Leg> which) {
    return line.legs().stream().filter(which).mapToDouble(l -> l.laid().metres()).sum();
  }

  private static List<SetUp> setUps(LinePlan plan) {
    return plan.floors().stream()
        .flatMap(f -> f.setUps().stream())
        .sorted(Comparator.comparingInt(SetUp::number))
        .toList();
  }
}
