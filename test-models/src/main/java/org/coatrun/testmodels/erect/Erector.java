package org.coatrun.testmodels.erect;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.coatrun.testmodels.facts.ElementFact;
import org.coatrun.testmodels.facts.Matter;
import org.coatrun.testmodels.ifc.Body;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.ifc.Item;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Mesh;
import org.coatrun.testmodels.step.Ref;

/**
 * Puts elements into the building: works out their placement in the storey, writes them and keeps
 * what is known of them.
 */
public final class Erector {
  private final IfcWriter ifc;
  private final Consumer<ElementFact> facts;
  private final Written building;
  private final Groups groups;
  private final MemberBodies bodies;
  private final List<Level> open = new ArrayList<>();
  private final List<Ref> storeys = new ArrayList<>();

  /** Starts a building. */
  public Erector(IfcWriter ifc, Consumer<ElementFact> facts, Written building) {
    this.ifc = ifc;
    this.facts = facts;
    this.building = building;
    this.groups = new Groups(ifc);
    this.bodies = new MemberBodies(ifc);
  }

  /** Returns the file. */
  public IfcWriter ifc() {
    return ifc;
  }

  Groups groups() {
    return groups;
  }

  /** Adds a storey. */
  public Level level(String name, double elevation) {
    Written storey = ifc.spatial().storey(building, name, elevation);
    Level level = new Level(storey, name, elevation);
    open.add(level);
    storeys.add(storey.ref());
    return level;
  }

  /** Adds a straight member to a storey. */
  public Written member(Level level, Piece piece) {
    Written written = loose(level, level.storey().placement(), level.inside(frame(piece)), piece);
    level.contain(written.ref());
    return written;
  }

  /** Adds a straight member that will be part of an assembly whose frame is that of the storey. */
  public Written part(Level level, Written assembly, Piece piece) {
    return loose(level, assembly.placement(), level.inside(frame(piece)), piece);
  }

  private static Frame frame(Piece piece) {
    return Frame.along(piece.start(), piece.end(), piece.up());
  }

  private Written loose(Level level, Ref parent, Frame frame, Piece piece) {
    Body body = bodies.body(piece);
    Ref shape =
        piece.kind() == ElementKind.MEMBER
            ? ifc.products().shape(body)
            : ifc.products().shapeWithAxis(body, piece.length());
    Section section = piece.section();
    Item item =
        Item.of(piece.kind(), piece.predefined(), piece.name(), section.name(), piece.mark());
    Written written = ifc.products().add(item, parent, frame, shape);
    groups.typed(groups.type(piece.kind(), piece.predefined(), section.name()), written.ref());
    groups.member(section, piece.grade(), piece.top(), written.ref());
    if (piece.form() == Form.OPENINGS) {
      openCopes(written, piece);
    }
    facts.accept(fact(written, level, piece, body));
    return written;
  }

  private void openCopes(Written written, Piece piece) {
    if (piece.startCope().isCut()) {
      open(written, "Cope", Body.of("SweptSolid", bodies.box(piece, piece.startCope(), false)));
    }
    if (piece.endCope().isCut()) {
      open(written, "Cope", Body.of("SweptSolid", bodies.box(piece, piece.endCope(), true)));
    }
  }

  /** Cuts an opening into an element, in the element's own frame. */
  public Written open(Written element, String name, Body body) {
    Item item = Item.of(ElementKind.OPENING, "OPENING", name, "", "");
    Ref shape = ifc.products().shape(body);
    Written opening = ifc.products().add(item, element.placement(), Frame.WORLD, shape);
    ifc.spatial().voids(element.ref(), opening.ref(), java.util.Optional.empty());
    return opening;
  }

  private ElementFact fact(Written written, Level level, Piece piece, Body body) {
    Section s = piece.section();
    double length = piece.length();
    boolean meshed = piece.form() == Form.BREP || piece.form() == Form.TRIANGLES;
    Mesh mesh = meshed ? bodies.mesh(piece) : new Mesh(List.of(), List.of());
    double area = meshed ? mesh.area() : sweptArea(piece);
    double volume = meshed ? mesh.volume() : sweptVolume(piece);
    return new ElementFact(
        written.guid(),
        piece.kind().entity(),
        piece.name(),
        piece.mark(),
        level.name(),
        s.name(),
        piece.grade().matter(),
        body.type(),
        length,
        OptionalDouble.of(area),
        OptionalDouble.of(volume));
  }

  private static double sweptArea(Piece piece) {
    Section s = piece.section();
    double plain = (s.perimeter() + s.innerPerimeter()) * piece.length() + 2 * s.area();
    return s instanceof IShape i
        ? plain + piece.startCope().areaChange(i) + piece.endCope().areaChange(i)
        : plain;
  }

  private static double sweptVolume(Piece piece) {
    double plain = piece.section().area() * piece.length();
    return piece.section() instanceof IShape i
        ? plain - piece.startCope().volume(i) - piece.endCope().volume(i)
        : plain;
  }

  /** Adds any element with a body given in its own frame, which stands in the building. */
  public Written element(Level level, Item item, Grade grade, Frame frame, Body body) {
    return element(level, item, grade, frame, body, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** As before, with what is known of its surface and volume. */
  public Written element(
      Level level,
      Item item,
      Grade grade,
      Frame frame,
      Body body,
      OptionalDouble area,
      OptionalDouble volume) {
    Ref shape = ifc.products().shape(body);
    Written written =
        ifc.products().add(item, level.storey().placement(), level.inside(frame), shape);
    level.contain(written.ref());
    groups.madeOf(grade, written.ref());
    record(written, level, item, grade.matter(), body.type(), area, volume);
    return written;
  }

  /** Adds an element without any body, such as an assembly or a member nobody modelled. */
  public Written bodiless(Level level, Item item, Matter matter) {
    Frame frame = Frame.WORLD;
    Written written = ifc.products().addBodiless(item, level.storey().placement(), frame);
    level.contain(written.ref());
    OptionalDouble none = OptionalDouble.empty();
    record(written, level, item, matter, "none", none, none);
    return written;
  }

  void record(
      Written written,
      Level level,
      Item item,
      Matter matter,
      String shape,
      OptionalDouble area,
      OptionalDouble volume) {
    String entity = item.kind().entity();
    facts.accept(
        new ElementFact(
            written.guid(),
            entity,
            item.name(),
            item.tag(),
            level.name(),
            item.objectType(),
            matter,
            shape,
            0,
            area,
            volume));
  }

  /** Gives an element a property set that others share. */
  public void describe(Written element, PropertyGroup group) {
    groups.described(group, element.ref());
  }

  /** Gives an element its base quantities. */
  public void quantify(Written element, Piece piece) {
    Section s = piece.section();
    String kind = piece.kind().name();
    String set = "Qto_" + kind.charAt(0) + kind.substring(1).toLowerCase(java.util.Locale.ROOT);
    ifc.properties()
        .memberQuantities(
            set + "BaseQuantities",
            piece.length(),
            s.area(),
            s.perimeter(),
            piece.grade().density(),
            element.ref());
  }

  /** Writes the relations of what has been added since the last time; keeps memory small. */
  public void settle() {
    open.forEach(level -> level.write(ifc));
    groups.write();
  }

  /** Writes what is left; the building is complete. */
  public void finish() {
    settle();
    ifc.spatial().aggregate(building.ref(), storeys);
  }
}
