package org.coatrun.ifcimport.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.shared.model.Building;

/** A small model for a test: records on top of a project in millimetres and degrees. */
record Snippet(String schema, String records) {

  /** The length unit may be replaced by the records' own #2. */
  private static final String PROJECT =
      """
      #1=IFCPROJECT('0000000000000000000001',$,'P',$,$,$,$,(#9),#3);
      #3=IFCUNITASSIGNMENT((#2,#4));
      #5=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
      #6=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.0174532925199433),#5);
      #7=IFCDIMENSIONALEXPONENTS(0,0,0,0,0,0,0);
      #4=IFCCONVERSIONBASEDUNIT(#7,.PLANEANGLEUNIT.,'DEGREE',#6);
      #9=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#13,$);
      #10=IFCCARTESIANPOINT((0.,0.,0.));
      #11=IFCDIRECTION((0.,0.,1.));
      #12=IFCDIRECTION((1.,0.,0.));
      #13=IFCAXIS2PLACEMENT3D(#10,$,$);
      #14=IFCCARTESIANPOINT((0.,0.));
      #15=IFCAXIS2PLACEMENT2D(#14,$);
      #16=IFCLOCALPLACEMENT($,#13);
      """;

  private static final String MILLIMETRE = "#2=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);\n";

  /** Member #100 with the body item #50. */
  static String member(String schema, String item) {
    String last = schema.equals("IFC2X3") ? "" : ",$";
    return item
        + "#90=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#50));\n"
        + "#91=IFCPRODUCTDEFINITIONSHAPE($,$,(#90));\n"
        + "#100=IFCMEMBER('0000000000000000000100',$,'M',$,$,#16,#91,'T1'"
        + last
        + ");\n";
  }

  Path write(Path folder) throws IOException {
    String units = records.contains("#2=") ? "" : MILLIMETRE;
    String text =
        "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\n"
            + "FILE_NAME('','',(''),(''),'','','');\nFILE_SCHEMA(('"
            + schema
            + "'));\nENDSEC;\nDATA;\n"
            + PROJECT
            + units
            + records
            + "ENDSEC;\nEND-ISO-10303-21;\n";
    Path file = Files.createTempFile(folder, "snippet", ".ifc");
    return Files.writeString(file, text);
  }

  Building read(Path folder) throws IOException {
    return IfcImport.read(List.of(write(folder)), ImportOptions.DEFAULT, ProgressListener.silent());
  }
}
