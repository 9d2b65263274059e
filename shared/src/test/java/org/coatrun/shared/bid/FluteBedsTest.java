package org.coatrun.shared.bid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.Extent;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.surface.Surfaces;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

/** Bays of beams by hand, all under one deck. */
class FluteBedsTest {

  private static final ElementId DECK = new ElementId(0, 1);
  private static final List<Cover> COVERED =
      List.of(new Cover(DECK, Cover.Kind.CONTACT, Area.ofSquareMetres(0.5)));

  private final List<Member> members = new ArrayList<>();
  private final SortedMap<ElementId, Measurement> measured = new TreeMap<>();
  private final SortedMap<ElementId, Extent> extents = new TreeMap<>();

  private ElementId beam(double x0, double y0, double x1, double y1) {
    ElementId id = new ElementId(0, 10 + members.size());
    members.add(
        new Member(
            identity(id),
            Role.BEAM,
            new SectionName("W12X26", SectionName.Source.PROFILE),
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            Body.none()));
    measured.put(id, measurement(id));
    Vec3 from = new Vec3(x0, y0, 4);
    Vec3 to = new Vec3(x1, y1, 4);
    extents.put(id, new Extent(id, from, to, 0.3, from, to));
    return id;
  }

  private static Measurement measurement(ElementId id) {
    return new Measurement.Measured(
        id,
        Length.ofMetres(9),
        Volume.ofCubicMetres(0.05),
        new SurfaceLedger(
            Area.ofSquareMetres(10),
            Area.ZERO,
            Area.ZERO,
            Area.ZERO,
            Area.ofSquareMetres(0.5),
            Area.ofSquareMetres(9.5)),
        Optional.empty(),
        COVERED);
  }

  private static Identity identity(ElementId id) {
    return new Identity(
        id, "guid" + id.step(), "IfcBeam", "", "", "", Optional.empty(), Optional.empty());
  }

  private double bed(ElementId member, Deck.Form form) {
    Deck deck =
        new Deck(identity(DECK), form, false, List.of(), List.of(), Properties.none(), Body.none());
    Building building =
        new Building(
            "Bay",
            Vec3.ZERO,
            List.of(),
            List.of(),
            members,
            List.of(deck),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    Surfaces surfaces = new Surfaces(measured, List.of(), Frame.empty(), new TreeMap<>(), extents);
    Takeoff takeoff = TakeoffAssembly.assemble(building, surfaces);
    return FluteBeds.of(takeoff).bed(member, COVERED).squareMetres();
  }

  /** A bay of 9 by 9 m: four beams along x carry the deck, two girders along y carry the beams. */
  @Test
  void flutesRunAcrossTheBeamsThatCarryTheDeckAndAlongTheGirders() {
    ElementId infill = beam(0, 0, 9, 0);
    beam(9, 3, 0, 3);
    beam(0, 6, 9, 6);
    beam(0, 9, 9, 9);
    ElementId girder = beam(0, 0, 0, 9);
    beam(9, 9, 9, 0);
    assertThat(bed(infill, Deck.Form.FLAT)).isCloseTo(0.5, within(1e-12));
    assertThat(bed(infill, Deck.Form.SLAB_ON_DECK)).isCloseTo(0.5, within(1e-12));
    assertThat(bed(girder, Deck.Form.FLAT)).isZero();
  }

  /** The same bay turned by any angle. */
  @Test
  void directionDoesNotCount() {
    double c = Math.cos(2.1);
    double s = Math.sin(2.1);
    ElementId infill = beam(0, 0, 9 * c, 9 * s);
    beam(-3 * s, 3 * c, 9 * c - 3 * s, 9 * s + 3 * c);
    ElementId girder = beam(0, 0, -9 * s, 9 * c);
    assertThat(bed(infill, Deck.Form.FLAT)).isCloseTo(0.5, within(1e-12));
    assertThat(bed(girder, Deck.Form.FLAT)).isZero();
  }

  @Test
  void withoutACommonDirectionAllAreFilled() {
    ElementId one = beam(0, 0, 9, 0);
    ElementId other = beam(0, 0, 0, 9);
    assertThat(bed(one, Deck.Form.FLAT)).isCloseTo(0.5, within(1e-12));
    assertThat(bed(other, Deck.Form.FLAT)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void flutesThatTheModelDrawsAreNotGuessed() {
    assertThat(bed(beam(0, 0, 9, 0), Deck.Form.SHEET)).isZero();
  }
}
