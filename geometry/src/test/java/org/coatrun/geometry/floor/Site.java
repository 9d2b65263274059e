package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Stair;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.model.Wall;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Extent;
import org.coatrun.shared.units.Length;

/** Buildings of boxes, put together by hand. */
final class Site {

  private final List<Storey> storeys = new ArrayList<>();
  private final List<Member> members = new ArrayList<>();
  private final List<Deck> decks = new ArrayList<>();
  private final List<Slab> slabs = new ArrayList<>();
  private final List<Wall> walls = new ArrayList<>();
  private final List<Stair> stairs = new ArrayList<>();
  private final List<Space> spaces = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Extent> extents = new ArrayList<>();
  private long next = 1;

  Site storey(String name, double z) {
    storeys.add(new Storey(new ElementId(0, next++), "", name, Length.ofMetres(z)));
    return this;
  }

  /** A slab by its plan and its top; 0.2 m thick. */
  ElementId slab(double x0, double y0, double x1, double y1, double top) {
    Identity id = identity("slab");
    Body body = box(x0, y0, top - 0.2, x1, y1, top);
    slabs.add(new Slab(id, Slab.Kind.FLOOR, List.of(), Properties.none(), body));
    return id.id();
  }

  /** A slab of a kind that is not read. */
  void unreadSlab(String name) {
    Body body = Body.of(Transform3.IDENTITY, new Shape.Unsupported("FancySolid", ""));
    slabs.add(new Slab(identity(name), Slab.Kind.FLOOR, List.of(), Properties.none(), body));
  }

  void bareDeck(double x0, double y0, double x1, double y1, double top) {
    Body body = box(x0, y0, top - 0.04, x1, y1, top);
    decks.add(
        new Deck(
            identity("deck"),
            Deck.Form.FLAT,
            false,
            List.of(),
            List.of(),
            Properties.none(),
            body));
  }

  /** A hole in a slab whose top is at the height given. */
  void hole(ElementId slab, String name, double x0, double y0, double x1, double y1, double top) {
    Body body = box(x0, y0, top - 0.2, x1, y1, top);
    openings.add(new Opening(identity(name), slab, Opening.Fill.NOTHING, body));
  }

  ElementId wall(Substance of, double x0, double y0, double z0, double x1, double y1, double z1) {
    Identity id = identity("wall");
    walls.add(
        new Wall(
            id,
            new Classification(of, List.of()),
            List.of(),
            Properties.none(),
            box(x0, y0, z0, x1, y1, z1)));
    return id.id();
  }

  void door(ElementId wall, double x0, double y0, double z0, double x1, double y1, double z1) {
    Body body = box(x0, y0, z0, x1, y1, z1);
    openings.add(new Opening(identity("door"), wall, Opening.Fill.DOOR, body));
  }

  void stair(double x0, double y0, double z0, double x1, double y1, double z1) {
    stairs.add(new Stair(identity("flight"), box(x0, y0, z0, x1, y1, z1)));
  }

  void room(String name, double x0, double y0, double z0, double x1, double y1, double z1) {
    spaces.add(new Space(identity(name), "", Properties.none(), box(x0, y0, z0, x1, y1, z1)));
  }

  /** A column of 0.3 m square about a point. */
  void column(double x, double y, double z0, double z1) {
    steel(Role.COLUMN, x - 0.15, y - 0.15, z0, x + 0.15, y + 0.15, z1);
    ElementId id = members.get(members.size() - 1).id();
    extents.add(
        new Extent(
            id,
            new Vec3(x, y, z0),
            new Vec3(x, y, z1),
            0,
            new Vec3(x - 0.15, y - 0.15, z0),
            new Vec3(x + 0.15, y + 0.15, z1)));
  }

  /** A beam of 0.2 m width and 0.4 m depth along x or y, by its top. */
  void beam(double x0, double y0, double x1, double y1, double top) {
    double dx = x0 == x1 ? 0.1 : 0;
    double dy = x0 == x1 ? 0 : 0.1;
    steel(Role.BEAM, x0 - dx, y0 - dy, top - 0.4, x1 + dx, y1 + dy, top);
    ElementId id = members.get(members.size() - 1).id();
    extents.add(
        new Extent(
            id,
            new Vec3(x0, y0, top - 0.2),
            new Vec3(x1, y1, top - 0.2),
            0.4,
            new Vec3(x0 - dx, y0 - dy, top - 0.4),
            new Vec3(x1 + dx, y1 + dy, top)));
  }

  private void steel(Role role, double x0, double y0, double z0, double x1, double y1, double z1) {
    members.add(
        new Member(
            identity(role.name()),
            role,
            SectionName.NONE,
            new Classification(Substance.STEEL, List.of()),
            List.of(),
            Properties.none(),
            box(x0, y0, z0, x1, y1, z1)));
  }

  Floors floors() {
    var building =
        new Building(
            "", Vec3.ZERO, List.of(), storeys, members, decks, slabs, walls, List.of(), stairs,
            spaces, openings, List.of());
    return FloorCutter.cut(building, extents, FloorOptions.defaults());
  }

  private Identity identity(String name) {
    return new Identity(
        new ElementId(0, next++), "", "", name, "", "", Optional.empty(), Optional.empty());
  }

  private static Body box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return Body.of(
        Transform3.translation(new Vec3((x0 + x1) / 2, (y0 + y1) / 2, z0)),
        new Shape.Extrusion(
            new Profile.Rectangle("", x1 - x0, y1 - y0, 0), Transform3.IDENTITY, Vec3.Z, z1 - z0));
  }
}
