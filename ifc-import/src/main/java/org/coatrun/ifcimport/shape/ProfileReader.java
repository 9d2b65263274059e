package org.coatrun.ifcimport.shape;

import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Transform2;

/** Profiles of every kind. What cannot be read comes out as unsupported, under its name. */
final class ProfileReader {

  private final CurveReader curves;
  private final Depth depth;
  private final double length;
  private final double angle;

  ProfileReader(CurveReader curves, Depth depth) {
    this.curves = curves;
    this.depth = depth;
    this.length = curves.axes().length();
    this.angle = curves.angle();
  }

  Profile profile(Entity profile) {
    try {
      return depth.within(() -> placed(profile));
    } catch (BrokenRecordException e) {
      return new Profile.Unsupported(profile.text("ProfileName"), reason(profile, e));
    }
  }

  private static String reason(Entity profile, BrokenRecordException e) {
    return e.step() == profile.id() ? profile.kind() : profile.kind() + " (" + e.words() + ")";
  }

  /** The profile moved to its Position, where that moves it at all. */
  private Profile placed(Entity p) {
    Profile read = read(p);
    Transform2 position = p.ref("Position").map(curves.axes()::frame2).orElse(Transform2.IDENTITY);
    return Axes.isIdentity(position) ? read : new Profile.Placed(read.name(), position, read);
  }

  private Profile read(Entity p) {
    String name = p.text("ProfileName");
    return switch (p.kind()) {
      case "IfcIShapeProfileDef" -> iShape(name, p);
      case "IfcAsymmetricIShapeProfileDef" -> asymmetricI(name, p);
      case "IfcUShapeProfileDef" -> uShape(name, p);
      case "IfcLShapeProfileDef" -> lShape(name, p);
      case "IfcTShapeProfileDef" -> tShape(name, p);
      case "IfcCShapeProfileDef" ->
          new Profile.CShape(
              name,
              above(p, "Depth"),
              above(p, "Width"),
              above(p, "WallThickness"),
              above(p, "Girth"),
              radius(p, "InternalFilletRadius"));
      case "IfcZShapeProfileDef" ->
          new Profile.ZShape(
              name,
              above(p, "Depth"),
              above(p, "FlangeWidth"),
              above(p, "WebThickness"),
              above(p, "FlangeThickness"),
              radius(p, "FilletRadius"),
              radius(p, "EdgeRadius"));
      default -> simple(name, p);
    };
  }

  private Profile simple(String name, Entity p) {
    return switch (p.kind()) {
      case "IfcRectangleHollowProfileDef" ->
          new Profile.RectangleHollow(
              name,
              above(p, "XDim"),
              above(p, "YDim"),
              above(p, "WallThickness"),
              radius(p, "InnerFilletRadius"),
              radius(p, "OuterFilletRadius"));
      case "IfcRectangleProfileDef" ->
          new Profile.Rectangle(name, above(p, "XDim"), above(p, "YDim"), 0);
      case "IfcRoundedRectangleProfileDef" ->
          new Profile.Rectangle(
              name, above(p, "XDim"), above(p, "YDim"), radius(p, "RoundingRadius").orElse(0));
      case "IfcCircleHollowProfileDef" ->
          new Profile.CircleHollow(name, above(p, "Radius"), above(p, "WallThickness"));
      case "IfcCircleProfileDef" -> new Profile.Circle(name, above(p, "Radius"));
      case "IfcEllipseProfileDef" ->
          new Profile.Ellipse(name, above(p, "SemiAxis1"), above(p, "SemiAxis2"));
      case "IfcTrapeziumProfileDef" ->
          new Profile.Trapezium(
              name,
              above(p, "BottomXDim"),
              above(p, "TopXDim"),
              above(p, "YDim"),
              p.needNumber("TopXOffset") * length);
      default -> free(name, p);
    };
  }

  private Profile free(String name, Entity p) {
    return switch (p.kind()) {
      case "IfcArbitraryClosedProfileDef", "IfcArbitraryProfileDefWithVoids" -> outline(name, p);
      case "IfcCenterLineProfileDef" ->
          new Profile.CentreLine(
              name, Pieces.flat(curves.curve(p.need("Curve"))), above(p, "Thickness"));
      case "IfcCompositeProfileDef" ->
          new Profile.Composite(name, p.needRefs("Profiles").stream().map(this::profile).toList());
      case "IfcDerivedProfileDef" -> derived(name, p, curves.axes().operator2(p.need("Operator")));
      // Whatever stands as its operator: a mirrored profile is mirrored about y.
      case "IfcMirroredProfileDef" -> derived(name, p, Transform2.MIRROR_Y);
      default -> throw p.broken("this kind of profile is not handled");
    };
  }

  private Profile iShape(String name, Entity p) {
    return new Profile.IShape(
        name,
        above(p, "OverallWidth"),
        above(p, "OverallDepth"),
        above(p, "WebThickness"),
        above(p, "FlangeThickness"),
        radius(p, "FilletRadius"),
        radius(p, "FlangeEdgeRadius"),
        slope(p, "FlangeSlope"));
  }

  /**
   * The older schema makes this a kind of I-shape whose own attributes are the bottom flange's; the
   * newer ones name both flanges.
   */
  private Profile asymmetricI(String name, Entity p) {
    boolean named = p.has("BottomFlangeWidth");
    double bottomThickness = above(p, named ? "BottomFlangeThickness" : "FlangeThickness");
    var bottom =
        new Profile.Flange(
            above(p, named ? "BottomFlangeWidth" : "OverallWidth"),
            bottomThickness,
            radius(p, named ? "BottomFlangeFilletRadius" : "FilletRadius"),
            radius(p, "BottomFlangeEdgeRadius"),
            slope(p, "BottomFlangeSlope"));
    var top =
        new Profile.Flange(
            above(p, "TopFlangeWidth"),
            p.number("TopFlangeThickness").isPresent()
                ? above(p, "TopFlangeThickness")
                : bottomThickness,
            radius(p, "TopFlangeFilletRadius"),
            radius(p, "TopFlangeEdgeRadius"),
            slope(p, "TopFlangeSlope"));
    return new Profile.AsymmetricI(
        name, above(p, "OverallDepth"), above(p, "WebThickness"), bottom, top);
  }

  private Profile uShape(String name, Entity p) {
    return new Profile.UShape(
        name,
        above(p, "Depth"),
        above(p, "FlangeWidth"),
        above(p, "WebThickness"),
        above(p, "FlangeThickness"),
        radius(p, "FilletRadius"),
        radius(p, "EdgeRadius"),
        slope(p, "FlangeSlope"));
  }

  private Profile lShape(String name, Entity p) {
    double deep = above(p, "Depth");
    double width = p.number("Width").isPresent() ? above(p, "Width") : deep;
    return new Profile.LShape(
        name,
        deep,
        width,
        above(p, "Thickness"),
        radius(p, "FilletRadius"),
        radius(p, "EdgeRadius"),
        slope(p, "LegSlope"));
  }

  private Profile tShape(String name, Entity p) {
    return new Profile.TShape(
        name,
        above(p, "Depth"),
        above(p, "FlangeWidth"),
        above(p, "WebThickness"),
        above(p, "FlangeThickness"),
        radius(p, "FilletRadius"),
        radius(p, "FlangeEdgeRadius"),
        radius(p, "WebEdgeRadius"),
        slope(p, "WebSlope"),
        slope(p, "FlangeSlope"));
  }

  private Profile outline(String name, Entity p) {
    Curve2 outer = Pieces.flat(curves.closed(p.need("OuterCurve")));
    List<Curve2> holes =
        p.refs("InnerCurves").stream().map(c -> Pieces.flat(curves.closed(c))).toList();
    return new Profile.Outline(name, outer, holes);
  }

  private Profile derived(String name, Entity p, Transform2 by) {
    Profile parent = profile(p.need("ParentProfile"));
    return new Profile.Placed(name.isEmpty() ? parent.name() : name, by, parent);
  }

  private double above(Entity p, String attribute) {
    double value = p.needNumber(attribute) * length;
    if (!(value > 0)) {
      throw p.broken(attribute + " is not above zero");
    }
    return value;
  }

  /** Absent is unknown, zero is sharp; a negative one makes no sense and counts as unknown. */
  private OptionalDouble radius(Entity p, String attribute) {
    OptionalDouble given = p.number(attribute);
    return given.isPresent() && given.getAsDouble() >= 0
        ? OptionalDouble.of(given.getAsDouble() * length)
        : OptionalDouble.empty();
  }

  private OptionalDouble slope(Entity p, String attribute) {
    OptionalDouble given = p.number(attribute);
    return given.isPresent()
        ? OptionalDouble.of(given.getAsDouble() * angle)
        : OptionalDouble.empty();
  }
}
