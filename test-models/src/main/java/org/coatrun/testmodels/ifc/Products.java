package org.coatrun.testmodels.ifc;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** Elements with their placement and shape. */
public final class Products {
  private static final Token NONE = Token.UNSET;
  private final IfcWriter ifc;

  Products(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /** Adds the representation of a body. */
  public Ref representation(Body body) {
    Ref context = ifc.contexts().body();
    return ifc.add("IFCSHAPEREPRESENTATION", context, "Body", body.type(), body.items());
  }

  /** Adds the shape of an element that has a body only. */
  public Ref shape(Body body) {
    return ifc.add("IFCPRODUCTDEFINITIONSHAPE", NONE, NONE, List.of(representation(body)));
  }

  /** Adds the shape of a member: its axis from the frame's origin along z, and its body. */
  public Ref shapeWithAxis(Body body, double length) {
    return ifc.add(
        "IFCPRODUCTDEFINITIONSHAPE", NONE, NONE, List.of(axis(length), representation(body)));
  }

  /** Adds a shape that is an axis only. */
  public Ref axisOnly(double length) {
    return ifc.add("IFCPRODUCTDEFINITIONSHAPE", NONE, NONE, List.of(axis(length)));
  }

  private Ref axis(double length) {
    Ref line = ifc.geometry().line(List.of(Vec3.ZERO, new Vec3(0, 0, length)));
    Ref context = ifc.contexts().axis();
    return ifc.add("IFCSHAPEREPRESENTATION", context, "Axis", "Curve3D", List.of(line));
  }

  /** Adds an element with a shape. */
  public Written add(Item item, Ref parent, Frame frame, Ref shape) {
    return write(item, parent, frame, shape);
  }

  /** Adds an element without a shape, such as an assembly. */
  public Written addBodiless(Item item, Ref parent, Frame frame) {
    return write(item, parent, frame, NONE);
  }

  private Written write(Item item, Ref parent, Frame frame, Object shape) {
    Ref placement = ifc.geometry().local(parent, frame);
    String guid = ifc.nextElementId();
    List<Object> all = new ArrayList<>(14);
    all.add(guid);
    all.add(ifc.history());
    all.add(item.name());
    all.add(NONE);
    all.add(textOrNone(item.objectType()));
    all.add(placement);
    all.add(shape);
    all.add(textOrNone(item.tag()));
    addTail(all, item);
    return new Written(ifc.add(item.kind().entity(), all.toArray()), guid, placement);
  }

  static Object textOrNone(String text) {
    return text.isEmpty() ? NONE : text;
  }

  private void addTail(List<Object> all, Item item) {
    boolean old = ifc.isOld();
    Token kind = Token.of(item.predefined());
    switch (item.kind().tail()) {
      case KIND_SINCE_4 -> {
        if (!old) {
          all.add(kind);
        }
      }
      case KIND -> all.add(kind);
      case PROXY -> all.add(old ? NONE : kind);
      case ASSEMBLY -> {
        all.add(Token.of("SITE"));
        all.add(kind);
      }
      case DOOR -> addDoor(all, item, kind);
      case FLIGHT -> addFlight(all, item, kind);
      case BAR -> addBar(all, item, kind);
      case FASTENER -> {
        all.add(ifc.length(item.numbers().get(0)));
        all.add(ifc.length(item.numbers().get(1)));
        if (!old) {
          all.add(kind);
        }
      }
    }
  }

  private void addDoor(List<Object> all, Item item, Token kind) {
    all.add(ifc.length(item.numbers().get(0)));
    all.add(ifc.length(item.numbers().get(1)));
    if (!ifc.isOld()) {
      all.add(kind);
      all.add(Token.of("SINGLE_SWING_LEFT"));
      all.add(NONE);
    }
  }

  private void addFlight(List<Object> all, Item item, Token kind) {
    all.add(item.numbers().get(0).intValue());
    all.add(item.numbers().get(1).intValue());
    all.add(ifc.length(item.numbers().get(2)));
    all.add(ifc.length(item.numbers().get(3)));
    if (!ifc.isOld()) {
      all.add(kind);
    }
  }

  private void addBar(List<Object> all, Item item, Token role) {
    double diameter = item.numbers().get(0);
    all.add("Grade 60");
    all.add(ifc.length(diameter));
    all.add(ifc.area(Math.PI * diameter * diameter / 4));
    all.add(ifc.length(item.numbers().get(1)));
    all.add(role);
    all.add(Token.of("TEXTURED"));
  }
}
