package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.SurfaceLedger;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Kinds of body that seldom carry steel, from their text to their closed formula: meshes of each
 * form, primitives, boxed half-spaces and sections along a spine.
 */
class BodyKindsTest {

  private static final List<String> NEWER = List.of("IFC4", "IFC4X3");
  private static final List<String> ALL = List.of("IFC2X3", "IFC4", "IFC4X3");

  /** Corners of a cube from 0 to 1, and its faces with their normals outward. */
  private static final int[][] CUBE = {
    {0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}, {0, 0, 1}, {1, 0, 1}, {1, 1, 1}, {0, 1, 1}
  };

  private static final int[][] FACES = {
    {1, 4, 3, 2}, {5, 6, 7, 8}, {1, 2, 6, 5}, {2, 3, 7, 6}, {3, 4, 8, 7}, {4, 1, 5, 8}
  };

  @TempDir Path folder;

  /** In m² and m³. */
  record Kind(String name, List<String> schemas, String records, double area, double volume) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Kind> kinds() {
    return Stream.of(meshes(), primitives(), cuts(), spines()).flatMap(List::stream);
  }

  private static List<Kind> meshes() {
    String whole = box(1000, 0, 200) + shell(120, "IFCCLOSEDSHELL", 1000, 6);
    String cave = whole + box(2000, 50, 100) + shell(121, "IFCCLOSEDSHELL", 2000, 6);
    String faces = whole + shell(122, "IFCCONNECTEDFACESET", 1000, 6);
    return List.of(
        new Kind("brep", ALL, whole + "#100=IFCFACETEDBREP(#120);\n", 0.24, 0.008),
        new Kind(
            "brep with a void",
            ALL,
            cave + "#100=IFCFACETEDBREPWITHVOIDS(#120,(#121));\n",
            0.3,
            0.007),
        new Kind(
            "closed shell", ALL, whole + "#100=IFCSHELLBASEDSURFACEMODEL((#120));\n", 0.24, 0.008),
        new Kind(
            "set of faces", ALL, faces + "#100=IFCFACEBASEDSURFACEMODEL((#122));\n", 0.24, 0.008),
        new Kind(
            "open shell, which has no inside",
            ALL,
            box(1000, 0, 200)
                + shell(120, "IFCOPENSHELL", 1000, 5)
                + "#100=IFCSHELLBASEDSURFACEMODEL((#120));\n",
            0.2,
            0),
        new Kind("triangles", NEWER, triangles(".T.", "$"), 0.24, 0.008),
        new Kind(
            "triangles that do not say whether they close",
            NEWER,
            triangles("$", "$"),
            0.24,
            0.008),
        new Kind(
            "triangles by way of an index",
            NEWER,
            triangles(".T.", "(1,2,3,4,5,6,7,8)"),
            0.24,
            0.008),
        new Kind("polygons", NEWER, polygons(""), 0.24, 0.008),
        new Kind(
            "polygons, one with a void",
            NEWER,
            polygons("(50.,50.,0.),(150.,50.,0.),(150.,150.,0.),(50.,150.,0.)"),
            0.23,
            0));
  }

  private static List<Kind> primitives() {
    double r = 0.1;
    return List.of(
        new Kind("block", ALL, "#100=IFCBLOCK(#13,200.,100.,50.);\n", 0.07, 0.001),
        new Kind(
            "solid of a block",
            ALL,
            "#101=IFCBLOCK(#13,200.,100.,50.);\n#100=IFCCSGSOLID(#101);\n",
            0.07,
            0.001),
        new Kind(
            "sphere",
            ALL,
            "#100=IFCSPHERE(#13,100.);\n",
            4 * Math.PI * r * r,
            4 * Math.PI * r * r * r / 3),
        new Kind(
            "cylinder",
            ALL,
            "#100=IFCRIGHTCIRCULARCYLINDER(#13,500.,100.);\n",
            2 * Math.PI * r * (0.5 + r),
            Math.PI * r * r * 0.5),
        new Kind(
            "cone",
            ALL,
            "#100=IFCRIGHTCIRCULARCONE(#13,500.,100.);\n",
            Math.PI * r * (r + Math.hypot(r, 0.5)),
            Math.PI * r * r * 0.5 / 3),
        new Kind(
            "pyramid",
            ALL,
            "#100=IFCRECTANGULARPYRAMID(#13,200.,100.,300.);\n",
            0.02 + 0.2 * Math.hypot(0.05, 0.3) + 0.1 * Math.hypot(0.1, 0.3),
            0.02 * 0.3 / 3));
  }

  private static List<Kind> cuts() {
    String block =
        """
        #101=IFCBLOCK(#13,200.,100.,50.);
        #102=IFCCARTESIANPOINT((150.,0.,0.));
        #103=IFCAXIS2PLACEMENT3D(#102,#12,#11);
        #104=IFCPLANE(#103);
        #105=IFCCARTESIANPOINT((0.,0.,0.));
        #106=IFCBOUNDINGBOX(#105,500.,500.,500.);
        """;
    return List.of(
        new Kind(
            "half-space",
            ALL,
            block
                + "#107=IFCHALFSPACESOLID(#104,.F.);\n#100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#107);\n",
            2 * (0.15 * 0.1 + 0.15 * 0.05 + 0.1 * 0.05),
            0.15 * 0.1 * 0.05),
        new Kind(
            "boxed half-space, whose box bounds nothing",
            ALL,
            block
                + "#107=IFCBOXEDHALFSPACE(#104,.T.,#106);\n#100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#107);\n",
            2 * (0.05 * 0.1 + 0.05 * 0.05 + 0.1 * 0.05),
            0.05 * 0.1 * 0.05));
  }

  private static List<Kind> spines() {
    String frames =
        """
        #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,100.,50.);
        #102=IFCCARTESIANPOINT((0.,0.,2000.));
        #103=IFCAXIS2PLACEMENT3D(#102,$,$);
        #104=IFCPOLYLINE((#10,#102));
        #106=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#104);
        #107=IFCCOMPOSITECURVE((#106),.F.);
        #108=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,100.,100.);
        """;
    double sloped = 2 * 2 * (0.05 + 0.1) / 2 + 2 * 0.1 * Math.hypot(2, 0.025);
    return List.of(
        new Kind(
            "spine",
            ALL,
            frames + "#100=IFCSECTIONEDSPINE(#107,(#101,#101),(#13,#103));\n",
            0.3 * 2 + 2 * 0.005,
            0.01),
        new Kind(
            "spine of two sections",
            ALL,
            frames + "#100=IFCSECTIONEDSPINE(#107,(#101,#108),(#13,#103));\n",
            sloped + 0.015,
            2 * 0.1 * 0.075),
        new Kind(
            "sections along a directrix",
            List.of("IFC4X3"),
            frames
                + """
                #110=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(500.),$,$,$,#104);
                #111=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(1500.),$,$,$,#104);
                #112=IFCAXIS2PLACEMENTLINEAR(#110,$,$);
                #113=IFCAXIS2PLACEMENTLINEAR(#111,$,$);
                #100=IFCSECTIONEDSOLIDHORIZONTAL(#104,(#101,#101),(#112,#113));
                """,
            0.3 + 2 * 0.005,
            0.005),
        new Kind(
            "disk along a polygon with rounded corners",
            NEWER,
            """
            #101=IFCCARTESIANPOINT((1000.,0.,0.));
            #102=IFCCARTESIANPOINT((1000.,1000.,0.));
            #103=IFCPOLYLINE((#10,#101,#102));
            #100=IFCSWEPTDISKSOLIDPOLYGONAL(#103,20.,$,$,$,200.);
            """,
            2 * Math.PI * 0.02 * (1.6 + 0.1 * Math.PI) + 2 * Math.PI * 0.0004,
            Math.PI * 0.0004 * (1.6 + 0.1 * Math.PI)));
  }

  /** Points and faces of a cube, each face with its number from {@code first} on. */
  private static String box(int first, double at, double side) {
    var text = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      text.append("#%d=IFCCARTESIANPOINT(%s);\n".formatted(first + 50 + i, corner(i, at, side)));
    }
    for (int f = 0; f < FACES.length; f++) {
      String loop =
          Stream.of(FACES[f][0], FACES[f][1], FACES[f][2], FACES[f][3])
              .map(c -> "#" + (first + 49 + c))
              .collect(Collectors.joining(","));
      text.append("#%d=IFCPOLYLOOP((%s));\n".formatted(first + 20 + f, loop));
      text.append("#%d=IFCFACEOUTERBOUND(#%d,.T.);\n".formatted(first + 30 + f, first + 20 + f));
      text.append("#%d=IFCFACE((#%d));\n".formatted(first + f, first + 30 + f));
    }
    return text.toString();
  }

  private static String corner(int i, double at, double side) {
    return "(%s,%s,%s)"
        .formatted(at + side * CUBE[i][0], at + side * CUBE[i][1], at + side * CUBE[i][2]);
  }

  private static String shell(int number, String kind, int first, int faces) {
    var refs = new ArrayList<String>();
    for (int f = 0; f < faces; f++) {
      refs.add("#" + (first + f));
    }
    return "#%d=%s((%s));\n".formatted(number, kind, String.join(",", refs));
  }

  private static String points(String more) {
    var all = new ArrayList<String>();
    for (int i = 0; i < 8; i++) {
      all.add(corner(i, 0, 200));
    }
    if (!more.isEmpty()) {
      all.add(more);
    }
    return "#101=IFCCARTESIANPOINTLIST3D((" + String.join(",", all) + "));\n";
  }

  private static String triangles(String closed, String index) {
    var all = new ArrayList<String>();
    for (int[] f : FACES) {
      all.add("(%d,%d,%d)".formatted(f[0], f[1], f[2]));
      all.add("(%d,%d,%d)".formatted(f[0], f[2], f[3]));
    }
    return points("")
        + "#100=IFCTRIANGULATEDFACESET(#101,$,%s,(%s),%s);\n"
            .formatted(closed, String.join(",", all), index);
  }

  /** With a void, its bottom has a hole and the cube is open there. */
  private static String polygons(String hole) {
    var text = new StringBuilder(points(hole));
    var refs = new ArrayList<String>();
    for (int f = 0; f < FACES.length; f++) {
      int[] c = FACES[f];
      String ring = "(%d,%d,%d,%d)".formatted(c[0], c[1], c[2], c[3]);
      boolean open = f == 0 && !hole.isEmpty();
      text.append(
          open
              ? "#110=IFCINDEXEDPOLYGONALFACEWITHVOIDS(%s,((9,10,11,12)));\n".formatted(ring)
              : "#%d=IFCINDEXEDPOLYGONALFACE(%s);\n".formatted(110 + f, ring));
      refs.add("#" + (110 + f));
    }
    return text + "#100=IFCPOLYGONALFACESET(#101,$,(%s),$);\n".formatted(String.join(",", refs));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void measuresItsClosedFormula(Kind kind) throws IOException {
    for (String schema : kind.schemas()) {
      Measurement.Measured m = new Sketch(schema).add(kind.records()).steel(9000, 100).only(folder);
      SurfaceLedger ledger = m.ledger();
      assertThat(ledger.body().squareMetres())
          .as(schema)
          .isCloseTo(kind.area(), withPercentage(1e-6));
      assertThat(m.volume().cubicMetres())
          .as(schema)
          .isCloseTo(kind.volume(), withPercentage(1e-6));
    }
  }
}
