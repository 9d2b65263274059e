package org.coatrun.geometry.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Standing;
import org.junit.jupiter.api.Test;

/** Boxes for slabs, members and rooms: where each stands is known by its corners. */
class StandingsTest {

  private final List<Member> members = new ArrayList<>();
  private final List<Slab> slabs = new ArrayList<>();
  private final List<Space> rooms = new ArrayList<>();

  private static Body box(double x, double y, double z, double dx, double dy, double dz) {
    return Body.of(
        Transform3.translation(new Vec3(x, y, z)),
        new Shape.Block(Transform3.IDENTITY, dx, dy, dz));
  }

  private void member(long step, Role role, Body body) {
    members.add(
        new Member(
            Identity.of(step, "m" + step),
            role,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            body));
  }

  private void slab(long step, Slab.Kind kind, Body body) {
    slabs.add(new Slab(Identity.of(step, "s" + step), kind, List.of(), Properties.none(), body));
  }

  private Standing standing(long step) {
    Building building =
        new Building(
            "Boat House",
            Vec3.ZERO,
            List.of(new ModelFile("boat.ifc", "IFC4", "IFC4", "metre", 1, "")),
            List.of(),
            members,
            List.of(),
            slabs,
            List.of(),
            List.of(),
            List.of(),
            rooms,
            List.of(),
            List.of());
    return SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), (done, total) -> {})
        .standing(new ElementId(0, step))
        .orElseThrow();
  }

  /** Two floors of 20 m by 10 m, tops at 0 and 4 m, 0.2 m thick. */
  private void twoFloors() {
    slab(1, Slab.Kind.BASE, box(0, 0, -0.2, 20, 10, 0.2));
    slab(2, Slab.Kind.FLOOR, box(0, 0, 3.8, 20, 10, 0.2));
  }

  private static void level(Optional<Standing.Level> level, long plate, double height) {
    assertThat(level.orElseThrow().plate()).isEqualTo(new ElementId(0, plate));
    assertThat(level.orElseThrow().height().metres()).isCloseTo(height, within(1e-9));
  }

  @Test
  void aBeamUnderASlabStandsOverTheFloorBelow() {
    twoFloors();
    member(10, Role.BEAM, box(5, 5, 3.4, 6, 0.2, 0.4));

    Standing s = standing(10);
    level(s.floor(), 1, 0);
    level(s.over(), 2, 3.8);
    assertThat(s.middle().x()).isCloseTo(8, within(1e-9));
    assertThat(s.high().metres()).isCloseTo(3.8, within(1e-9));
    assertThat(s.passed()).isEmpty();
  }

  @Test
  void aColumnOnAFootingUnderItsFloorPassesTheNext() {
    twoFloors();
    member(11, Role.COLUMN, box(5, 5, -0.5, 0.3, 0.3, 5.7));

    Standing s = standing(11);
    level(s.floor(), 1, 0);
    level(s.over(), 2, 3.8);
    assertThat(s.passed()).hasSize(1);
    level(Optional.of(s.passed().get(0)), 2, 4);
  }

  @Test
  void inATowerEachStandsOnItsOwnFloorAndAColumnPassesThoseWithinIt() {
    for (int i = 0; i < 300; i++) {
      slab(1 + i, Slab.Kind.FLOOR, box(0, 0, 4 * i - 0.2, 20, 10, 0.2));
    }
    member(1001, Role.BEAM, box(5, 5, 4 * 150 + 3.4, 6, 0.2, 0.4));
    member(1002, Role.COLUMN, box(5, 5, 4 * 20, 0.3, 0.3, 16.2));
    member(1003, Role.BEAM, box(5, 5, 4 * 299 + 3.4, 6, 0.2, 0.4));

    level(standing(1001).floor(), 151, 600);
    level(standing(1001).over(), 152, 603.8);
    level(standing(1002).floor(), 21, 80);
    assertThat(standing(1002).passed().stream().map(l -> l.plate().step()))
        .containsExactly(22L, 23L, 24L);
    level(standing(1003).floor(), 300, 1196);
    assertThat(standing(1003).over()).isEmpty();
  }

  @Test
  void whatEndsJustAboveAFloorDoesNotPassIt() {
    twoFloors();
    member(12, Role.COLUMN, box(5, 5, 0, 0.3, 0.3, 4.4));

    assertThat(standing(12).passed()).isEmpty();
  }

  @Test
  void aSpandrelOutsideTheSlabsEdgeBelongsToTheFloorBesideIt() {
    slab(1, Slab.Kind.BASE, box(0, 0, -9.2, 20, 12, 0.2));
    slab(2, Slab.Kind.FLOOR, box(0, 0, -0.2, 20, 10, 0.2));
    member(13, Role.BEAM, box(5, 10.3, 3.4, 6, 0.2, 0.4));

    // its middle is 0.4 m beyond the edge, and the pit 12.4 m further down
    level(standing(13).floor(), 2, 0);
  }

  @Test
  void landingsOfStairsAreNoFloors() {
    twoFloors();
    slab(3, Slab.Kind.LANDING, box(4, 4, 1.8, 3, 3, 0.2));
    member(14, Role.BEAM, box(4.5, 5, 3.4, 2, 0.2, 0.4));

    level(standing(14).floor(), 1, 0);
  }

  @Test
  void findsTheRoomAroundOrUnderAMember() {
    twoFloors();
    rooms.add(new Space(Identity.of(20, "low"), "", Properties.none(), box(0, 0, 0, 10, 10, 2.8)));
    rooms.add(
        new Space(Identity.of(21, "tall"), "", Properties.none(), box(10, 0, 0, 10, 10, 3.8)));
    member(15, Role.BEAM, box(2, 5, 3.4, 6, 0.2, 0.4));
    member(16, Role.BEAM, box(12, 5, 3.4, 6, 0.2, 0.4));
    member(17, Role.BEAM, box(2, 5, 7.4, 6, 0.2, 0.4));

    assertThat(standing(15).room()).contains(new ElementId(0, 20));
    assertThat(standing(16).room()).contains(new ElementId(0, 21));
    assertThat(standing(17).room()).isEmpty();
  }
}
