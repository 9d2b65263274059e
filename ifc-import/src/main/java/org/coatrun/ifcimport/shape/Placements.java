package org.coatrun.ifcimport.shape;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Where objects stand: the whole chain of placements. Safe for several threads. */
final class Placements {

  private static final int KEPT = 256;
  private static final String ITSELF = "this placement refers to itself";

  private final IfcModel model;
  private final Axes axes;
  private final GridPlacements grids;

  /** Placements that others refer to; those of single elements are not kept. */
  private final Map<Long, Transform3> parents = new ConcurrentHashMap<>();

  /** Those of single elements asked for last: mostly they are asked for twice in a row. */
  private final AtomicReferenceArray<Known> recent = new AtomicReferenceArray<>(KEPT);

  private record Known(long placement, Transform3 world) {}

  /** Of the parents, the ones whose chain is known to end. */
  private final Set<Long> sound = ConcurrentHashMap.newKeySet();

  Placements(IfcModel model, Axes axes, double angle) {
    this.model = model;
    this.axes = axes;
    this.grids = new GridPlacements(axes, angle);
  }

  /**
   * What is wrong with who refers to whom, up to the first placement of the chain; where each
   * stands is not looked at.
   */
  Optional<BrokenRecordException> fault(long placement) {
    try {
      OptionalLong parent = checkedParent(placement);
      if (parent.isPresent() && !sound.contains(parent.getAsLong())) {
        sound.addAll(chain(placement, parent.getAsLong()));
      }
      return Optional.empty();
    } catch (BrokenRecordException e) {
      return Optional.of(e);
    }
  }

  /** All placements that one stands by, from its parent up. */
  private Set<Long> chain(long placement, long parent) {
    Set<Long> above = new HashSet<>();
    OptionalLong at = OptionalLong.of(parent);
    while (at.isPresent() && !sound.contains(at.getAsLong())) {
      long link = at.getAsLong();
      if (link == placement || !above.add(link)) {
        throw model.get(link).broken(ITSELF);
      }
      at = checkedParent(link);
    }
    return above;
  }

  private OptionalLong checkedParent(long placement) {
    Entity link = link(placement);
    if (link.isA("IfcGridPlacement")) {
      world(placement); // its grid stands somewhere, too
    }
    if (!link.isA("IfcObjectPlacement")) {
      throw link.broken("something stands by this, which is no placement");
    }
    return parent(link);
  }

  private Entity link(long id) {
    if (!model.file().contains(id)) {
      throw new BrokenRecordException(id, "", "there is no such placement");
    }
    return model.get(id);
  }

  /** From the placement's own axes to world axes. */
  Transform3 world(long placement) {
    int slot = (int) (placement & (KEPT - 1));
    Known last = recent.get(slot);
    if (last == null || last.placement != placement) {
      last = new Known(placement, world(placement, Set.of()));
      recent.set(slot, last);
    }
    return last.world;
  }

  /**
   * The same.
   *
   * @param within placements of the grids that are being placed by it
   */
  private Transform3 world(long placement, Set<Long> within) {
    Deque<Entity> chain = new ArrayDeque<>();
    Set<Long> seen = new HashSet<>();
    Transform3 from = Transform3.IDENTITY;
    long at = placement;
    while (true) {
      Transform3 known = parents.get(at);
      if (known != null) {
        from = known;
        break;
      }
      Entity link = link(at);
      if (!seen.add(at)) {
        throw link.broken(ITSELF);
      }
      chain.push(link);
      OptionalLong next = parent(link);
      if (next.isEmpty()) {
        break;
      }
      at = next.getAsLong();
    }
    return down(chain, from, placement, within);
  }

  private static OptionalLong parent(Entity link) {
    return link.refId("PlacementRelTo");
  }

  private Transform3 down(Deque<Entity> chain, Transform3 from, long placement, Set<Long> within) {
    Transform3 world = from;
    while (!chain.isEmpty()) {
      Entity link = chain.pop();
      world = world.after(own(link, world, within));
      if (link.id() != placement) {
        parents.put(link.id(), world);
      }
    }
    return world;
  }

  private Transform3 own(Entity link, Transform3 parent, Set<Long> within) {
    if (link.isA("IfcLocalPlacement")) {
      return axes.frame(link.need("RelativePlacement"));
    }
    if (link.isA("IfcGridPlacement")) {
      Optional<Transform3> grid = gridOf(link, within);
      // The crossing is found in the axes of the grid, which itself stands somewhere.
      Transform3 crossing = grids.frame(link);
      return grid.map(g -> parent.inverse().after(g).after(crossing)).orElse(crossing);
    }
    if (link.isA("IfcLinearPlacement")) {
      return axes.frame(link, "CartesianPosition");
    }
    throw link.broken("this kind of placement is not handled");
  }

  /** The world frame of the grid whose axes cross at the placement. */
  private Optional<Transform3> gridOf(Entity link, Set<Long> within) {
    List<Entity> crossing = link.need("PlacementLocation").refs("IntersectingAxes");
    for (long id : model.idsOf("IfcGrid")) {
      Entity grid = model.get(id);
      for (String family : List.of("UAxes", "VAxes", "WAxes")) {
        for (long axis : grid.refIds(family)) {
          if (!crossing.isEmpty() && crossing.get(0).id() == axis) {
            OptionalLong at = grid.refId("ObjectPlacement");
            return at.isPresent()
                ? Optional.of(gridWorld(at.getAsLong(), within))
                : Optional.empty();
          }
        }
      }
    }
    return Optional.empty();
  }

  private Transform3 gridWorld(long placement, Set<Long> within) {
    Transform3 known = parents.get(placement);
    if (known == null) {
      Set<Long> more = new HashSet<>(within);
      if (!more.add(placement)) {
        throw model.get(placement).broken(ITSELF);
      }
      known = world(placement, more);
      parents.put(placement, known);
    }
    return known;
  }

  /** The origin of the placement, or nothing where it is broken. */
  Optional<Vec3> originOf(long placement) {
    try {
      return Optional.of(world(placement).origin());
    } catch (BrokenRecordException e) {
      return Optional.empty();
    }
  }
}
