package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.surface.Measurement;

/** Measures one element at a time among its neighbours. */
final class ElementTakeoff {

  /** Above this share of the area a surface gapes: something was lost in a cut. */
  private static final double GAPE = 1e-4;

  /** A kept piece shorter than this share of the stated length may be the offcut. */
  private static final double SHORT = 0.5;

  /** A measurement and what was found amiss on the way. */
  record Outcome(Measurement measurement, List<Finding> findings) {}

  private final Building building;
  private final SurfaceOptions options;
  private final Readings readings;

  ElementTakeoff(Building building, SurfaceOptions options) {
    this.building = building;
    this.options = options;
    this.readings = new Readings(options);
  }

  Outcome measure(Things.Result result, Neighbours neighbours, Kernel kernel) {
    if (result instanceof Things.Result.Failed f) {
      return unresolved(f.element(), f.code(), f.kind(), f.sentence());
    }
    Things.Result.Made made = (Things.Result.Made) result;
    List<Thing> near = neighbours.of(made.thing());
    Reading reading = readings.of(made, near, kernel);
    if (reading instanceof Reading.Failed f) {
      return unresolved(made.element(), f.code(), f.kind(), f.sentence());
    }
    return measured(made, (Reading.Measured) reading, near);
  }

  private Outcome measured(Things.Result.Made made, Reading.Measured reading, List<Thing> near) {
    Element element = made.element();
    reading.drawing().ifPresent(d -> options.meshes().orElseThrow().accept(made.mesh(d)));
    List<ElementId> numbers = near.stream().map(Thing::id).toList();
    return new Outcome(reading.of(element.id(), numbers), findings(made));
  }

  private List<Finding> findings(Things.Result.Made made) {
    Element element = made.element();
    Formed.Made formed = made.formed();
    var findings = new ArrayList<Finding>();
    made.notes().forEach(n -> findings.add(finding(element, n.code(), n.sentence())));
    if (formed.closed() && formed.gape() > GAPE) {
      findings.add(
          finding(
              element,
              SurfaceFinding.OPEN_SHELL,
              "The surface left by its cuts does not close: " + formed.gape() + " of its area."));
    }
    if (element instanceof Member member && formed.cut()) {
      sayIfShort(member, formed.length(), findings);
    }
    return findings;
  }

  /** The length of a quantity set leaves cuts aside, so what is left should not be far from it. */
  private void sayIfShort(Member member, double length, List<Finding> findings) {
    OptionalDouble stated = member.properties().quantity("Length");
    if (stated.isPresent() && length < SHORT * stated.getAsDouble()) {
      String sentence =
          String.format(
              Locale.ROOT,
              "Its cuts leave %.3f m of the %.3f m that its quantities state.",
              length,
              stated.getAsDouble());
      findings.add(finding(member, SurfaceFinding.SHORT_PIECE, sentence));
    }
  }

  private Outcome unresolved(Element element, FindingCode code, String kind, String sentence) {
    return new Outcome(
        new Measurement.Unresolved(element.id(), code, kind, sentence),
        List.of(finding(element, code, sentence)));
  }

  private Finding finding(Element element, FindingCode code, String sentence) {
    String name = building.fileName(element.id());
    return new Finding(code, name, 0, element.id().step(), element.identity().guid(), sentence);
  }
}
