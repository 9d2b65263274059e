package org.coatrun.routing.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.ReachLimits;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/**
 * Gathers work into cells: every bit of steel goes to the highest walkable floor under its
 * underside, and there to the square it stands over.
 */
public final class WorkGatherer {

  private final List<FloorOutline> floors;
  private final List<FreeArea> free;
  private final List<CellGrid> grids;
  private final ReachLimits reach;
  private final double side;
  private final double aside;

  /**
   * @param floors from the lowest up
   * @param free their free areas, in the same order
   * @param side that no cell exceeds; with the whip at its middle it must reach the corners
   * @param aside how far from free floor steel may stand and still be sprayed from it
   */
  public WorkGatherer(
      List<FloorOutline> floors,
      List<FreeArea> free,
      ReachLimits reach,
      Length side,
      Length aside) {
    this.floors = List.copyOf(floors);
    this.free = List.copyOf(free);
    this.reach = reach;
    this.side = side.metres();
    this.aside = aside.metres();
    grids = floors.stream().map(f -> new CellGrid(f.plate(), side.metres())).toList();
  }

  /** Every piece of work in cells, or named as groundless. */
  public WorkPlan gather(List<WorkPiece> work) {
    var cells = new TreeMap<Key, Gathered>();
    var groundless = new ArrayList<WorkPiece>();
    for (WorkPiece piece : work) {
      double left = 0;
      for (WorkBit bit : WorkBit.of(piece, floors)) {
        Optional<Integer> floor = floorUnder(bit);
        if (floor.isEmpty()) {
          left += bit.volume();
        } else {
          cells.computeIfAbsent(key(floor.get(), bit.at()), k -> new Gathered()).add(bit, piece);
        }
      }
      if (left > 0) {
        groundless.add(withVolume(piece, left));
      }
    }
    return new WorkPlan(
        cells.entrySet().stream().map(e -> cell(e.getKey(), e.getValue())).toList(), groundless);
  }

  private static WorkPiece withVolume(WorkPiece p, double volume) {
    return new WorkPiece(
        p.mark(), p.guid(), p.from(), p.to(), p.depth(), Volume.ofCubicMetres(volume));
  }

  private WorkCell cell(Key key, Gathered g) {
    Vec2 middle = g.middle();
    Vec2 at = free.get(key.floor).nearest(middle, Length.ofMetres(side + aside)).orElse(middle);
    Length highest =
        Length.ofMetres(Math.max(0, g.top - floors.get(key.floor).elevation().metres()));
    return new WorkCell(
        key.floor,
        at,
        Volume.ofCubicMetres(g.volume),
        highest,
        reach.accessTo(highest),
        g.marks.stream().sorted(Comparator.naturalOrder()).distinct().toList());
  }

  private Key key(int floor, Vec2 at) {
    return new Key(floor, grids.get(floor).row(at), grids.get(floor).column(at));
  }

  /** The highest floor whose slab is not above the bit's underside and that has floor near it. */
  private Optional<Integer> floorUnder(WorkBit bit) {
    for (int f = floors.size() - 1; f >= 0; f--) {
      if (floors.get(f).elevation().metres() <= bit.underside() + LineTolerance.LEVEL
          && free.get(f).nearest(bit.at(), Length.ofMetres(aside)).isPresent()) {
        return Optional.of(f);
      }
    }
    return sunk(bit);
  }

  /** A base plate in a pocket of the lowest floor is sprayed from that floor. */
  private Optional<Integer> sunk(WorkBit bit) {
    boolean pocket =
        !floors.isEmpty()
            && floors.get(0).elevation().metres() <= bit.underside() + LineTolerance.POCKET
            && free.get(0).nearest(bit.at(), Length.ofMetres(aside)).isPresent();
    return pocket ? Optional.of(0) : Optional.empty();
  }

  /** A square of a floor; in order by floor, then from south to north and west to east. */
  private record Key(int floor, int row, int column) implements Comparable<Key> {
    @Override
    public int compareTo(Key o) {
      return floor != o.floor
          ? Integer.compare(floor, o.floor)
          : row != o.row ? Integer.compare(row, o.row) : Integer.compare(column, o.column);
    }
  }

  private static final class Gathered {
    private final List<String> marks = new ArrayList<>();
    private double volume;
    private double x;
    private double y;
    private double top = Double.NEGATIVE_INFINITY;

    void add(WorkBit bit, WorkPiece piece) {
      volume += bit.volume();
      x += bit.volume() * bit.at().x();
      y += bit.volume() * bit.at().y();
      top = Math.max(top, bit.top());
      marks.add(piece.mark().isEmpty() ? piece.guid() : piece.mark());
    }

    Vec2 middle() {
      return new Vec2(x / volume, y / volume);
    }
  }
}
