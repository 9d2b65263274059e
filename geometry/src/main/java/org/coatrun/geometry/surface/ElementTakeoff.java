package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.build.BuildResult;
import org.coatrun.geometry.build.ShapeBuilder;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** Measures one element at a time. */
final class ElementTakeoff {

  /** A measurement and what was found amiss on the way. */
  record Outcome(Measurement measurement, List<Finding> findings) {}

  private final Building building;

  ElementTakeoff(Building building) {
    this.building = building;
  }

  Outcome measure(Element element) {
    if (!element.body().isPresent()) {
      return unresolved(element, SurfaceFinding.NO_BODY, "body", "It has no body.");
    }
    BuildResult result = ShapeBuilder.build(element.body().shape(), Transform3.IDENTITY);
    if (result instanceof BuildResult.NotBuilt n) {
      return unresolved(element, n.code(), n.kind(), n.sentence());
    }
    return measured(element, (BuildResult.Built) result);
  }

  private Outcome measured(Element element, BuildResult.Built built) {
    BodyMeasure m = BodyMeasure.of(built);
    if (!(m.body() > 0)) {
      return unresolved(element, SurfaceFinding.EMPTY_BODY, "body", "Its body has no surface.");
    }
    var findings = new ArrayList<Finding>();
    m.notes().forEach(n -> findings.add(finding(element, n.code(), n.sentence())));
    boolean plate = element instanceof Member member && member.role() == Role.PLATE;
    Optional<SectionMeasure> section = plate ? Optional.empty() : m.section();
    return new Outcome(
        new Measurement.Measured(
            element.id(),
            Length.ofMetres(m.length()),
            Volume.ofCubicMetres(m.volume()),
            m.ledger(),
            section,
            List.of()),
        findings);
  }

  private Outcome unresolved(Element element, FindingCode code, String kind, String sentence) {
    return new Outcome(
        new Measurement.Unresolved(element.id(), code, kind, sentence),
        List.of(finding(element, code, sentence)));
  }

  private Finding finding(Element element, FindingCode code, String sentence) {
    int file = element.id().file();
    String name = file < building.files().size() ? building.files().get(file).name() : "";
    return new Finding(code, name, 0, element.id().step(), element.identity().guid(), sentence);
  }
}
