package org.coatrun.shared.estimate;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** Hand-made buildings and measurements. */
final class Lines {

  static final Storey GROUND = storey(1, "Ground", 0);
  static final Storey UPPER = storey(2, "Upper", 4);

  private Lines() {}

  static Storey storey(long step, String name, double elevation) {
    return new Storey(new ElementId(0, step), "", name, Length.ofMetres(elevation));
  }

  static Member member(long step, Substance substance, Role role, String section, Storey storey) {
    return new Member(
        identity(step, storey),
        role,
        new SectionName(section, SectionName.Source.PROFILE),
        new Classification(
            substance, List.of(new Evidence(Evidence.Source.MATERIAL, substance.word()))),
        List.of(),
        Properties.none(),
        Body.none());
  }

  static Deck deck(long step, Deck.Form form, Storey storey) {
    return new Deck(
        identity(step, storey), form, false, List.of(), List.of(), Properties.none(), Body.none());
  }

  static Identity identity(long step, Storey storey) {
    return new Identity(
        new ElementId(0, step),
        "guid" + step,
        "IfcBeam",
        "beam " + step,
        "",
        "",
        Optional.ofNullable(storey).map(Storey::id),
        Optional.empty());
  }

  static Building building(List<Member> members, List<Deck> decks, List<Finding> findings) {
    return new Building(
        "Quay Shed",
        Vec3.ZERO,
        List.of(new ModelFile("quay.ifc", "IFC4", "IFC4", "metre", 100, "")),
        List.of(GROUND, UPPER),
        members,
        decks,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        findings);
  }

  /**
   * A measured element: 2 m long, 1 dm3 of steel, body 1 m2 of which {@code exposed} m2 exposed.
   */
  static Measurement measured(long step, double exposed) {
    Area steel = Area.ofSquareMetres(0.0005);
    return new Measurement.Measured(
        new ElementId(0, step),
        Length.ofMetres(2),
        Volume.ofCubicMetres(0.001),
        new SurfaceLedger(
            Area.ofSquareMetres(1),
            Area.ZERO,
            Area.ofSquareMetres(0.1),
            Area.ZERO,
            Area.ofSquareMetres(0.9 - exposed),
            Area.ofSquareMetres(exposed)),
        Optional.of(
            new SectionMeasure(
                steel,
                Length.ofMetres(0.5),
                Length.ofMetres(0.4),
                Length.ofMetres(0.5),
                Length.ofMetres(0.4),
                SectionMeasure.Basis.SHARP,
                0,
                false)),
        List.of());
  }
}
