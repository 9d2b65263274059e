package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.geometry.exposure.BodyTree;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.geometry.solid.Tolerance;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Opening;
import org.locationtech.jts.geom.TopologyException;

/** Makes bodies ready to be cut; what cannot be made becomes a finding. For one thread. */
final class Cuts {

  private final Building building;
  private final Map<ElementId, List<Opening>> openings = new HashMap<>();
  private final List<Finding> findings;
  private final Kernel kernel = new Kernel(Tolerance.DEFAULT);

  Cuts(Building building, List<Finding> findings) {
    this.building = building;
    this.findings = findings;
    for (Opening o : building.openings()) {
      if (o.body().isPresent()) {
        openings.computeIfAbsent(o.host(), k -> new ArrayList<>()).add(o);
      }
    }
    openings.values().forEach(list -> list.sort(Comparator.comparing(Opening::id)));
  }

  List<Opening> openingsOf(Element host) {
    return openings.getOrDefault(host.id(), List.of());
  }

  /** The body with its openings taken out; empty where there is none or it cannot be made. */
  Optional<Cut> of(Element element) {
    return made(element, openingsOf(element));
  }

  /** The body as if nothing were taken out. */
  Optional<Cut> uncut(Element element) {
    return made(element, List.of());
  }

  private Optional<Cut> made(Element element, List<Opening> holes) {
    if (!element.body().isPresent()) {
      return Optional.empty();
    }
    try {
      Optional<SolidTree> host = tree(element);
      if (host.isEmpty()) {
        say(element, "could not be made");
        return Optional.empty();
      }
      SolidTree tree = host.get();
      for (Opening hole : holes) {
        Optional<SolidTree> cutter = tree(hole);
        if (cutter.isPresent()) {
          tree = SolidTree.less(tree, cutter.get());
        } else {
          say(hole, "could not be made and is not cut");
        }
      }
      return Optional.of(new Cut(element, Originals.of(tree, Tolerance.DEFAULT), kernel));
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      say(element, "could not be cut");
      return Optional.empty();
    }
  }

  private static Optional<SolidTree> tree(Element element) {
    BodyTree.Result r = BodyTree.of(element.body().shape(), element.body().placement());
    return r instanceof BodyTree.Result.Made m ? Optional.of(m.tree()) : Optional.empty();
  }

  /** Notes a body that is missing from a floor. */
  void say(Element element, String what) {
    String name = element.identity().name();
    String called = name.isEmpty() ? "#" + element.id().step() : name;
    findings.add(
        new Finding(
            LineFinding.FLOOR_PART_UNREAD,
            building.fileName(element.id()),
            0,
            element.id().step(),
            element.identity().guid(),
            "The body of " + called + " " + what + "."));
  }
}
