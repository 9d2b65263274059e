package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.deck.FluteVoids;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.Covering;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.profile.Rectangle2;
import org.coatrun.geometry.section.CoatFactors;
import org.coatrun.geometry.section.Sections;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.locationtech.jts.geom.TopologyException;

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
  private final FluteVoids flutes = new FluteVoids();
  private final CoatFactors coats = new CoatFactors();

  ElementTakeoff(Building building, SurfaceOptions options) {
    this.building = building;
    this.options = options;
  }

  Outcome measure(Things.Result result, Neighbours neighbours, Kernel kernel) {
    if (result instanceof Things.Result.Failed f) {
      return unresolved(f.element(), f.code(), f.kind(), f.sentence());
    }
    Things.Result.Made made = (Things.Result.Made) result;
    try {
      List<Thing> near = neighbours.of(made.thing());
      Exposure exposure = new Covering(options.exposure(), kernel).of(made.thing(), near);
      return measured(made, exposure, near, kernel);
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      return unresolved(
          made.element(),
          SurfaceFinding.NOT_MEASURED,
          "body",
          "Its surface could not be worked out: " + e.getMessage() + ".");
    }
  }

  private Outcome measured(
      Things.Result.Made made, Exposure exposure, List<Thing> near, Kernel kernel) {
    var findings = new ArrayList<Finding>();
    Element element = made.element();
    made.notes().forEach(n -> findings.add(finding(element, n.code(), n.sentence())));
    if (made.closed() && made.gape() > GAPE) {
      findings.add(
          finding(
              element,
              SurfaceFinding.OPEN_SHELL,
              "The surface left by its cuts does not close: " + made.gape() + " of its area."));
    }
    if (element instanceof Member member && made.cut()) {
      sayIfShort(member, length(made), findings);
    }
    options.meshes().ifPresent(m -> m.accept(ElementMesh.of(element, exposure, kernel)));
    Optional<SectionMeasure> section =
        element instanceof Member
            ? Sections.of(exposure, made.run(), coats, kernel)
            : Optional.empty();
    Measurement m =
        new Measurement.Measured(
            element.id(),
            Length.ofMetres(length(made)),
            Volume.ofCubicMetres(made.volume()),
            exposure.ledger(),
            section,
            exposure.covers(),
            flutes.of(exposure, near, kernel),
            element instanceof Deck ? Optional.of(flutes.measure(made.thing())) : Optional.empty());
    return new Outcome(m, findings);
  }

  /**
   * Along the way of an uncut sweep, else from end to end. Of what has no axis, such as a plate,
   * the longest side: of the section that is swept through its thickness, or of the box.
   */
  private static double length(Things.Result.Made made) {
    Optional<Axis> axis = made.thing().axis();
    if (axis.isEmpty()) {
      return made.run().map(ElementTakeoff::longest).orElse(longest(made.thing().bounds()));
    }
    Optional<Double> way = made.cut() ? Optional.empty() : made.run().map(Run::length);
    return way.orElse(axis.get().length());
  }

  private static double longest(Run run) {
    Rectangle2 section = run.start().bounds();
    return Math.max(run.length(), Math.max(section.width(), section.height()));
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

  private static double longest(Box box) {
    return Math.max(
        box.maxX() - box.minX(), Math.max(box.maxY() - box.minY(), box.maxZ() - box.minZ()));
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
