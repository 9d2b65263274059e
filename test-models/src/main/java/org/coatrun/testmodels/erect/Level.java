package org.coatrun.testmodels.erect;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;

/** A storey and what has been put into it since it was last written down. */
public final class Level {
  private final Written storey;
  private final String name;
  private final double elevation;
  private final List<Ref> elements = new ArrayList<>();
  private final List<Ref> spaces = new ArrayList<>();

  Level(Written storey, String name, double elevation) {
    this.storey = storey;
    this.name = name;
    this.elevation = elevation;
  }

  /** Returns the storey's name. */
  public String name() {
    return name;
  }

  /** Returns the height of the finished floor in metres. */
  public double elevation() {
    return elevation;
  }

  Written storey() {
    return storey;
  }

  /** Turns a frame of the building into one of the storey. */
  Frame inside(Frame building) {
    return building.moved(new Vec3(0, 0, -elevation));
  }

  void contain(Ref element) {
    elements.add(element);
  }

  void add(Ref space) {
    spaces.add(space);
  }

  void write(IfcWriter ifc) {
    if (!elements.isEmpty()) {
      ifc.spatial().contain(storey, elements);
    }
    if (!spaces.isEmpty()) {
      ifc.spatial().aggregate(storey.ref(), spaces);
    }
    elements.clear();
    spaces.clear();
  }
}
