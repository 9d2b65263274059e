package org.coatrun.cli.pitfall;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.surface.Measurement;

/**
 * A small model in millimetres and degrees, written for one of the schemas. Numbers up to 99 are
 * the sketch's own; #13 is the frame at the origin, #11 points up, #15 is the frame of the plane.
 */
final class Sketch {

  private static final String FRAME =
      """
      #1=IFCPROJECT('0000000000000000000001',$,'P',$,$,$,$,(#9),#3);
      #2=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
      #3=IFCUNITASSIGNMENT((#2,#4));
      #4=IFCCONVERSIONBASEDUNIT(#7,.PLANEANGLEUNIT.,'DEGREE',#6);
      #5=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
      #6=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.017453292519943295),#5);
      #7=IFCDIMENSIONALEXPONENTS(0,0,0,0,0,0,0);
      #9=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#13,$);
      #10=IFCCARTESIANPOINT((0.,0.,0.));
      #11=IFCDIRECTION((0.,0.,1.));
      #12=IFCDIRECTION((1.,0.,0.));
      #13=IFCAXIS2PLACEMENT3D(#10,$,$);
      #14=IFCCARTESIANPOINT((0.,0.));
      #15=IFCAXIS2PLACEMENT2D(#14,$);
      #16=IFCLOCALPLACEMENT($,#13);
      """;

  private final String schema;
  private final StringBuilder records = new StringBuilder(FRAME);
  private int guids = 1;

  Sketch(String schema) {
    this.schema = schema;
  }

  boolean isOld() {
    return schema.equals("IFC2X3");
  }

  /** What the newer schemas have behind what the old one has. */
  String newer(String attributes) {
    return isOld() ? "" : attributes;
  }

  Sketch add(String more) {
    records.append(more);
    return this;
  }

  /** The next GlobalId, quoted and with the owner left out. */
  String root() {
    return String.format("'%022d',$", ++guids);
  }

  /** A member with a body of one item, at the origin. */
  Sketch member(int number, int item) {
    return member(number, item, 16);
  }

  Sketch member(int number, int item, int placement) {
    return shape(number + 1, item)
        .add(
            "#%d=IFCMEMBER(%s,'M%d',$,$,#%d,#%d,$%s);\n"
                .formatted(number, root(), number, placement, number + 1, newer(",$")));
  }

  /** A product's shape with a body of one item; the number after is taken too. */
  Sketch shape(int number, int item) {
    return add("#%d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%d));\n".formatted(number, number + 1))
        .add(
            "#%d=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#%d));\n"
                .formatted(number + 1, item));
  }

  /** A bar of 100 by 50 mm and a length, upright from the origin. */
  Sketch bar(int number, double length) {
    return add("#%d=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,100.,50.);\n".formatted(number + 1))
        .swept(number, number + 1, length);
  }

  Sketch swept(int number, int profile, double length) {
    return add("#%d=IFCEXTRUDEDAREASOLID(#%d,#13,#11,%s);\n".formatted(number, profile, length));
  }

  /** A steel member of a profile, a metre long. */
  static Measurement.Measured metre(String schema, String profile, Path folder) throws IOException {
    return new Sketch(schema).add(profile).swept(100, 110, 1000).steel(200, 100).only(folder);
  }

  /** A member whose material is steel. */
  Sketch steel(int number, int item) {
    return member(number, item).material(number, "Steel S355");
  }

  Sketch material(int element, String name) {
    return add(
        "#%d=IFCMATERIAL('%s'%s);\n".formatted(element + 5, name, newer(",$,$"))
            + "#%d=IFCRELASSOCIATESMATERIAL(%s,$,$,(#%d),#%d);\n"
                .formatted(element + 6, root(), element, element + 5));
  }

  Building read(Path folder) throws IOException {
    String head =
        "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\n"
            + "FILE_NAME('','',(''),(''),'','','');\nFILE_SCHEMA(('"
            + schema
            + "'));\nENDSEC;\nDATA;\n";
    Path file = Files.createTempFile(folder, "sketch", ".ifc");
    Files.writeString(file, head + records + "ENDSEC;\nEND-ISO-10303-21;\n");
    return IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
  }

  Takeoff takeoff(Path folder) throws IOException {
    Building building = read(folder);
    return TakeoffAssembly.assemble(
        building, SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), Progress.silent()));
  }

  /** What its only member measures. */
  Measurement.Measured only(Path folder) throws IOException {
    Building building = read(folder);
    Member member = building.members().get(0);
    return (Measurement.Measured)
        SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), Progress.silent())
            .of(member.id())
            .orElseThrow();
  }

  static MemberLine line(Takeoff takeoff, long step) {
    return takeoff.members().stream()
        .filter(l -> l.identity().id().step() == step)
        .findFirst()
        .orElseThrow();
  }
}
