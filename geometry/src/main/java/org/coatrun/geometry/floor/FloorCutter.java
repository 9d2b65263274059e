package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.surface.Extent;
import org.coatrun.shared.units.Length;
import org.locationtech.jts.geom.Geometry;

/**
 * Cuts the floors out of a building: level tops of slabs and decks gathered by height, what stands
 * on them at ankle height, and where they are open to the storey below.
 *
 * <p>Storeys lend their names only; where a slab is in the model decides. Where steel is drawn
 * without slabs, floors are assumed and a finding says so. Never fails for what a model holds.
 */
public final class FloorCutter {

  private static final double NO_HEIGHT = 3;

  private final Building building;
  private final FloorOptions options;
  private final Wording words;
  private final SteelIndex steel;
  private final Cuts cuts;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Double, List<Region>> covers = new HashMap<>();

  private FloorCutter(
      Building building, Collection<Extent> steel, FloorOptions options, Wording words) {
    this.words = words;
    this.building = building;
    this.options = options;
    this.steel = new SteelIndex(steel);
    this.cuts = new Cuts(building, findings);
  }

  /**
   * The floors of a building, from the lowest up.
   *
   * @param steel where the steel is; only floors under steel, and the lowest, are of use
   */
  public static Floors cut(Building building, Collection<Extent> steel, FloorOptions options) {
    return cut(building, steel, options, Wording.metric());
  }

  /** The same, its findings worded so. */
  public static Floors cut(
      Building building, Collection<Extent> steel, FloorOptions options, Wording words) {
    return new FloorCutter(building, steel, options, words).cut(steel);
  }

  private Floors cut(Collection<Extent> extents) {
    List<Level> all = new ArrayList<>(Level.gather(Tops.of(building, cuts), options.sameLevel()));
    all.addAll(new AssumedFloors(extents, building.storeys(), options).missing(all));
    all.sort(Comparator.comparingDouble(Level::z));
    List<Level> working = new WorkingLevels(steel, options).of(all);
    List<String> names = LevelNames.of(working.stream().map(Level::z).toList(), building.storeys());
    var obstacles = new Obstacles(building, steel, cuts, options);
    obstacles.addWalls(building, findings);
    var voids = new Voids(building, cuts, options);
    var rooms = new Rooms(building, cuts);
    var floors = new ArrayList<FloorOutline>();
    for (int i = 0; i < working.size(); i++) {
      floors.add(outline(names.get(i), working.get(i), all, obstacles, voids, rooms));
    }
    return new Floors(floors, findings);
  }

  private FloorOutline outline(
      String name, Level level, List<Level> all, Obstacles obstacles, Voids voids, Rooms rooms) {
    sayAssumed(name, level);
    double z = level.z();
    Geometry slabs = level.region();
    Geometry fill = Plan.common(obstacles.fillUnder(z), Plan.grown(slabs, 1));
    Geometry plate =
        voids.withoutSleeves(Plan.closed(Plan.union(List.of(slabs, fill)), options.joint()));
    Geometry walls = obstacles.walls(z, plate);
    Geometry filled = Plan.union(List.of(plate, walls));
    return new FloorOutline(
        name,
        Length.ofMetres(z),
        Length.ofMetres(height(level, all)),
        Plan.regions(plate, options.leastOpening()),
        Plan.regions(walls, 1e-3),
        Plan.regions(obstacles.columns(z, plate), 1e-4),
        voids.of(level, plate, filled),
        rooms.on(z, plate),
        cover(level, all),
        List.of());
  }

  /** What lies over a floor, roofs and bare deck among them. */
  private List<Region> cover(Level level, List<Level> all) {
    var over = new ArrayList<Region>();
    for (Level above : all) {
      if (above.z() > level.z() + options.headroom() && !above.isAssumed()) {
        over.addAll(
            covers.computeIfAbsent(
                above.z(), z -> Plan.regions(above.region(), options.leastFloor())));
      }
    }
    return over;
  }

  private void sayAssumed(String name, Level level) {
    if (level.isAssumed()) {
      findings.add(
          Finding.of(LineFinding.ASSUMED_FLOOR, AssumedFloors.sentence(name, level, words)));
    } else if (level.tops().stream().anyMatch(t -> t.kind() == Top.Kind.BARE_DECK)) {
      findings.add(
          Finding.of(
              LineFinding.ASSUMED_FLOOR,
              name + ": deck is drawn without concrete, and is taken to carry a person."));
    }
  }

  /** To the underside of the next level over at least a quarter of it, else to the top of steel. */
  private double height(Level level, List<Level> all) {
    Geometry region = level.region();
    for (Level above : all) {
      if (above.z() > level.z() + options.headroom()
          && Plan.common(above.region(), region).getArea() >= 0.25 * region.getArea()) {
        return Math.max(0.5, above.under() - level.z());
      }
    }
    double highest = steel.highestOver(region);
    return highest > level.z() + options.headroom() ? highest - level.z() : NO_HEIGHT;
  }
}
