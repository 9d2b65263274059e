package org.coatrun.testmodels.ifc;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** The units and the geometric contexts of a file. */
final class Contexts {
  private static final double FOOT = 0.3048;
  private final IfcWriter ifc;
  private final Ref model;
  private final Ref body;
  private final Ref axis;
  private final Ref units;

  Contexts(IfcWriter ifc) {
    this.ifc = ifc;
    Ref origin = ifc.add("IFCCARTESIANPOINT", new double[] {0, 0, 0});
    Ref world = ifc.add("IFCAXIS2PLACEMENT3D", origin, Token.UNSET, Token.UNSET);
    double precision = ifc.length(1e-5);
    this.model =
        ifc.add(
            "IFCGEOMETRICREPRESENTATIONCONTEXT",
            Token.UNSET,
            "Model",
            3,
            precision,
            world,
            Token.UNSET);
    this.body = sub("Body");
    this.axis = sub("Axis");
    this.units = units();
  }

  private Ref sub(String name) {
    Object derived = Token.DERIVED;
    return ifc.add(
        "IFCGEOMETRICREPRESENTATIONSUBCONTEXT",
        name,
        "Model",
        derived,
        derived,
        derived,
        derived,
        model,
        Token.UNSET,
        Token.of("MODEL_VIEW"),
        Token.UNSET);
  }

  private Ref units() {
    List<Object> all = new ArrayList<>();
    all.add(lengthUnit());
    Ref squareMetre = si("AREAUNIT", "SQUARE_METRE");
    Ref cubicMetre = si("VOLUMEUNIT", "CUBIC_METRE");
    boolean foot = ifc.options().unit() == LengthUnit.FOOT;
    all.add(foot ? squareFoot(squareMetre) : squareMetre);
    all.add(foot ? cubicFoot(cubicMetre) : cubicMetre);
    all.add(ifc.options().unit().isConverted() ? degree() : si("PLANEANGLEUNIT", "RADIAN"));
    all.add(ifc.add("IFCSIUNIT", Token.DERIVED, Token.of("MASSUNIT"), Token.of("KILO"), gram()));
    return ifc.add("IFCUNITASSIGNMENT", all);
  }

  private static Token gram() {
    return Token.of("GRAM");
  }

  private Object lengthUnit() {
    Token kind = Token.of("LENGTHUNIT");
    Token metre = Token.of("METRE");
    return switch (ifc.options().unit()) {
      case MILLIMETRE -> ifc.add("IFCSIUNIT", Token.DERIVED, kind, Token.of("MILLI"), metre);
      case METRE -> si("LENGTHUNIT", "METRE");
      case INCH -> length("INCH", 0.0254);
      case FOOT -> length("FOOT", FOOT);
    };
  }

  private Ref length(String name, double metres) {
    Ref metre = si("LENGTHUNIT", "METRE");
    Token value = Token.number("IFCLENGTHMEASURE", metres);
    return converted("LENGTHUNIT", name, new int[] {1, 0, 0, 0, 0, 0, 0}, value, metre);
  }

  private Ref squareFoot(Ref squareMetre) {
    Token value = Token.number("IFCAREAMEASURE", FOOT * FOOT);
    int[] area = {2, 0, 0, 0, 0, 0, 0};
    return converted("AREAUNIT", "SQUARE FOOT", area, value, squareMetre);
  }

  private Ref cubicFoot(Ref cubicMetre) {
    Token value = Token.number("IFCVOLUMEMEASURE", FOOT * FOOT * FOOT);
    int[] volume = {3, 0, 0, 0, 0, 0, 0};
    return converted("VOLUMEUNIT", "CUBIC FOOT", volume, value, cubicMetre);
  }

  private Ref degree() {
    Ref radian = si("PLANEANGLEUNIT", "RADIAN");
    Token value = Token.number("IFCPLANEANGLEMEASURE", Math.PI / 180);
    return converted("PLANEANGLEUNIT", "DEGREE", new int[7], value, radian);
  }

  private Ref converted(String kind, String name, int[] exponents, Token value, Ref base) {
    Object[] powers = java.util.Arrays.stream(exponents).boxed().toArray();
    Ref dimensions = ifc.add("IFCDIMENSIONALEXPONENTS", powers);
    Ref factor = ifc.add("IFCMEASUREWITHUNIT", value, base);
    return ifc.add("IFCCONVERSIONBASEDUNIT", dimensions, Token.of(kind), name, factor);
  }

  private Ref si(String kind, String name) {
    return ifc.add("IFCSIUNIT", Token.DERIVED, Token.of(kind), Token.UNSET, Token.of(name));
  }

  Ref model() {
    return model;
  }

  Ref body() {
    return body;
  }

  Ref axis() {
    return axis;
  }

  Ref unitAssignment() {
    return units;
  }
}
