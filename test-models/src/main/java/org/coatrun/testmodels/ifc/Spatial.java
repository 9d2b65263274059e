package org.coatrun.testmodels.ifc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** Project, site, building, storeys, spaces, and the relations between things. */
public final class Spatial {
  private static final Token NONE = Token.UNSET;
  private static final Token ELEMENT = Token.of("ELEMENT");
  private final IfcWriter ifc;

  Spatial(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /** Adds project, site and building; the site carries the turn and the move of the options. */
  public Written building(String project, String site, String building) {
    Ref top = project(project);
    Written ground = site(site);
    Ref placement = ifc.geometry().local(ground.placement(), Frame.WORLD);
    String guid = ifc.nextElementId();
    Ref house =
        ifc.add(
            "IFCBUILDING",
            guid,
            ifc.history(),
            building,
            NONE,
            NONE,
            placement,
            NONE,
            NONE,
            ELEMENT,
            NONE,
            NONE,
            NONE);
    aggregate(top, List.of(ground.ref()));
    aggregate(ground.ref(), List.of(house));
    return new Written(house, guid, placement);
  }

  private Ref project(String name) {
    List<Ref> contexts = List.of(ifc.contexts().model());
    Ref units = ifc.contexts().unitAssignment();
    return ifc.add(
        "IFCPROJECT",
        ifc.nextElementId(),
        ifc.history(),
        name,
        NONE,
        NONE,
        NONE,
        NONE,
        contexts,
        units);
  }

  private Written site(String name) {
    Ref placement = ifc.geometry().local(siteFrame());
    String guid = ifc.nextElementId();
    Ref site =
        ifc.add(
            "IFCSITE",
            guid,
            ifc.history(),
            name,
            NONE,
            NONE,
            placement,
            NONE,
            NONE,
            ELEMENT,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE);
    return new Written(site, guid, placement);
  }

  private Frame siteFrame() {
    double turn = Math.toRadians(ifc.options().rotationDegrees());
    double tilt = Math.toRadians(ifc.options().tiltDegrees());
    Vec3 x = new Vec3(StrictMath.cos(turn), StrictMath.sin(turn), 0);
    Vec3 side = Vec3.Z.cross(x);
    Vec3 z = Vec3.Z.times(StrictMath.cos(tilt)).plus(side.times(-StrictMath.sin(tilt)));
    return new Frame(ifc.options().offset(), x, z);
  }

  /** Adds a storey of a building at a height in metres. */
  public Written storey(Written building, String name, double elevation) {
    Ref placement = ifc.geometry().local(building.placement(), Frame.at(0, 0, elevation));
    String guid = ifc.nextElementId();
    Ref storey =
        ifc.add(
            "IFCBUILDINGSTOREY",
            guid,
            ifc.history(),
            name,
            NONE,
            NONE,
            placement,
            NONE,
            NONE,
            ELEMENT,
            ifc.length(elevation));
    return new Written(storey, guid, placement);
  }

  /** Adds a space with its outline and height, standing on the storey. */
  public Written space(Written storey, String name, String longName, Outline plan, double height) {
    Ref profile = ifc.profiles().once(plan);
    Ref shape = ifc.products().shape(ifc.solids().straight(profile, height));
    Ref placement = ifc.geometry().local(storey.placement(), Frame.WORLD);
    String guid = ifc.nextElementId();
    List<Object> all = new ArrayList<>(List.of(guid, ifc.history(), name, NONE, NONE));
    all.addAll(List.of(placement, shape, longName, ELEMENT));
    all.add(Token.of(ifc.isOld() ? "INTERNAL" : "SPACE"));
    all.add(NONE);
    Ref space = ifc.add("IFCSPACE", all.toArray());
    return new Written(space, guid, placement);
  }

  /** Makes parts of a whole: storeys of a building, members of an assembly. */
  public void aggregate(Ref whole, List<Ref> parts) {
    ifc.addRooted("IFCRELAGGREGATES", NONE, NONE, whole, parts);
  }

  /** Puts elements into a storey. */
  public void contain(Written storey, List<Ref> elements) {
    ifc.addRooted("IFCRELCONTAINEDINSPATIALSTRUCTURE", NONE, NONE, elements, storey.ref());
  }

  /** Says that an opening voids an element and, where given, what fills it. */
  public void voids(Ref element, Ref opening, Optional<Ref> filling) {
    ifc.addRooted("IFCRELVOIDSELEMENT", NONE, NONE, element, opening);
    filling.ifPresent(f -> ifc.addRooted("IFCRELFILLSELEMENT", NONE, NONE, opening, f));
  }

  /** Adds a grid of straight axes, drawn from the origin. */
  public Ref grid(Written storey, List<GridLine> across, List<GridLine> along) {
    List<Ref> curves = new ArrayList<>();
    List<Ref> u = across.stream().map(line -> axis(line, curves)).toList();
    List<Ref> v = along.stream().map(line -> axis(line, curves)).toList();
    Ref set = ifc.add("IFCGEOMETRICCURVESET", curves);
    Ref context = ifc.contexts().model();
    Ref drawn =
        ifc.add("IFCSHAPEREPRESENTATION", context, "FootPrint", "GeometricCurveSet", List.of(set));
    Ref shape = ifc.add("IFCPRODUCTDEFINITIONSHAPE", NONE, NONE, List.of(drawn));
    Ref placement = ifc.geometry().local(storey.placement(), Frame.WORLD);
    List<Object> all = new ArrayList<>(List.of(ifc.nextElementId(), ifc.history(), "Grid"));
    all.addAll(List.of(NONE, NONE, placement, shape, u, v, NONE));
    if (!ifc.isOld()) {
      all.add(Token.of("RECTANGULAR"));
    }
    return ifc.add("IFCGRID", all.toArray());
  }

  private Ref axis(GridLine line, List<Ref> curves) {
    Ref curve = ifc.geometry().flatLine(List.of(line.from(), line.to()));
    curves.add(curve);
    return ifc.add("IFCGRIDAXIS", line.name(), curve, true);
  }
}
