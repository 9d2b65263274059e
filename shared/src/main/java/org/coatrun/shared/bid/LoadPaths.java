package org.coatrun.shared.bid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.frame.Connection;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.frame.FramePart;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.surface.Standing;

/**
 * What carries what: beams the members that frame into them and the plates that lie on them,
 * columns the beams and columns on them. Braces carry nothing here, and nothing carries them: under
 * gravity load they hang on.
 */
final class LoadPaths {

  /** A plate whose underside lies this near above a member lies on it. */
  private static final double LIES_ON_M = 0.15;

  private final Takeoff takeoff;
  private final RoofPlates plates;
  private final Map<ElementId, Set<ElementId>> carried = new HashMap<>();
  private final Map<ElementId, Set<ElementId>> carriers = new HashMap<>();
  private final Set<ElementId> underFloor;
  private final Set<ElementId> underRoof;

  LoadPaths(Takeoff takeoff, RoofPlates plates) {
    this.takeoff = takeoff;
    this.plates = plates;
    frame().connections().forEach(this::add);
    takeoff.members().forEach(this::addPlates);
    List<ElementId> floors = new ArrayList<>();
    List<ElementId> roofs = new ArrayList<>();
    for (ElementId id : carriers.keySet()) {
      if (plates.isPlate(id)) {
        (plates.isRoof(id) ? roofs : floors).add(id);
      }
    }
    underFloor = below(floors);
    underRoof = below(roofs);
    hangOnRoof();
  }

  /** What carries an element itself, sorted. */
  Set<ElementId> carriersOf(ElementId id) {
    return carriers.getOrDefault(id, Set.of());
  }

  /** Whether it carries roof, itself or through others, and no floor. */
  boolean supportsOnlyRoof(ElementId id) {
    return underRoof.contains(id) && !underFloor.contains(id);
  }

  private Frame frame() {
    return takeoff.surfaces().frame();
  }

  private void add(Connection c) {
    if (isBrace(c.member()) || isBrace(c.support())) {
      return;
    }
    boolean headed = c.kind() == Connection.Kind.BEARS_ON && c.at().startsWith("its head");
    switch (c.kind()) {
      case FRAMES_INTO, STACKED_ON, BEARS_ON, PASSES ->
          edge(headed ? c.member() : c.support(), headed ? c.support() : c.member());
      case SPLICED_TO, TOUCHES -> {
        // a splice goes on in the same line, and a plate spans nothing
      }
    }
    if (is(c.member(), FramePart.TRUSS) && is(c.support(), FramePart.TRUSS)) {
      edge(c.support(), c.member());
      edge(c.member(), c.support());
    }
  }

  private void addPlates(MemberLine line) {
    ElementId id = line.identity().id();
    if (isBrace(id) || is(id, FramePart.PLATE)) {
      return;
    }
    takeoff
        .surfaces()
        .standing(id)
        .ifPresent(s -> line.outcome().quantities().ifPresent(q -> addPlates(s, q)));
  }

  private void addPlates(Standing member, Quantities q) {
    double middle = (member.low().metres() + member.high().metres()) / 2;
    q.covers().stream()
        .map(cover -> cover.by())
        .filter(by -> plates.isPlate(by) && liesAbove(by, middle))
        .forEach(by -> edge(member.id(), by));
    member
        .over()
        .filter(o -> o.height().metres() <= member.high().metres() + LIES_ON_M)
        .ifPresent(o -> edge(member.id(), o.plate()));
  }

  private boolean liesAbove(ElementId plate, double height) {
    return takeoff
        .surfaces()
        .standing(plate)
        .map(p -> (p.low().metres() + p.high().metres()) / 2 > height)
        .orElse(false);
  }

  private void edge(ElementId carrier, ElementId load) {
    if (is(carrier, FramePart.COLUMN) && isBelowFoot(load, carrier)) {
      return;
    }
    carried.computeIfAbsent(carrier, k -> new TreeSet<>()).add(load);
    carriers.computeIfAbsent(load, k -> new TreeSet<>()).add(carrier);
  }

  /** A beam at the joint under a column's foot rests on what the column rests on. */
  private boolean isBelowFoot(ElementId load, ElementId column) {
    Optional<Standing> beam = takeoff.surfaces().standing(load);
    Optional<Standing> foot = takeoff.surfaces().standing(column);
    return beam.isPresent()
        && foot.isPresent()
        && (beam.get().low().metres() + beam.get().high().metres()) / 2 < foot.get().low().metres();
  }

  private Set<ElementId> below(List<ElementId> loads) {
    Set<ElementId> reached = new HashSet<>();
    Deque<ElementId> open = new ArrayDeque<>(loads);
    while (!open.isEmpty()) {
      for (ElementId carrier : carriers.getOrDefault(open.pop(), Set.of())) {
        if (reached.add(carrier)) {
          open.push(carrier);
        }
      }
    }
    return reached;
  }

  /** What carries nothing itself and hangs on roof members alone is of the roof: bridging, rods. */
  private void hangOnRoof() {
    Set<ElementId> hung = new HashSet<>();
    for (ElementId id : frame().members().keySet()) {
      Set<ElementId> on = carriers.getOrDefault(id, Set.of());
      if (!carried.containsKey(id) && !on.isEmpty() && on.stream().allMatch(this::isRoofMember)) {
        hung.add(id);
      }
    }
    underRoof.addAll(hung);
  }

  private boolean isRoofMember(ElementId id) {
    return supportsOnlyRoof(id) && !is(id, FramePart.COLUMN);
  }

  private boolean isBrace(ElementId id) {
    return is(id, FramePart.BRACE);
  }

  private boolean is(ElementId id, FramePart part) {
    return frame().member(id).map(m -> m.part() == part).orElse(false);
  }
}
