package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.surface.Measurement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An exact brep from file to surface: a round bar whose wall closes on one seam. */
class ExactBrepTest {

  private static final double RADIUS = 0.3;
  private static final double HEIGHT = 2;

  private static final String POST =
      """
      ISO-10303-21;
      HEADER;
      FILE_DESCRIPTION((''),'2;1');
      FILE_NAME('post.ifc','2026-01-01T00:00:00',(''),(''),'','','');
      FILE_SCHEMA(('IFC4'));
      ENDSEC;
      DATA;
      #1=IFCPROJECT('0000000000000000000001',$,'p',$,$,$,$,(#10),#5);
      #5=IFCUNITASSIGNMENT((#6));
      #6=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
      #10=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#11,$);
      #11=IFCAXIS2PLACEMENT3D(#12,$,$);
      #12=IFCCARTESIANPOINT((0.,0.,0.));
      #20=IFCLOCALPLACEMENT($,#11);
      #30=IFCMEMBER('0000000000000000000002',$,'post',$,$,#20,#31,$,$);
      #31=IFCPRODUCTDEFINITIONSHAPE($,$,(#32));
      #32=IFCSHAPEREPRESENTATION(#10,'Body','AdvancedBrep',(#33));
      #33=IFCADVANCEDBREP(#34);
      #34=IFCCLOSEDSHELL((#40,#50,#60));
      #100=IFCCARTESIANPOINT((300.,0.,0.));
      #101=IFCCARTESIANPOINT((300.,0.,2000.));
      #102=IFCVERTEXPOINT(#100);
      #103=IFCVERTEXPOINT(#101);
      #104=IFCDIRECTION((0.,0.,1.));
      #105=IFCDIRECTION((1.,0.,0.));
      #106=IFCAXIS2PLACEMENT3D(#12,#104,#105);
      #107=IFCCARTESIANPOINT((0.,0.,2000.));
      #108=IFCAXIS2PLACEMENT3D(#107,#104,#105);
      #109=IFCCIRCLE(#106,300.);
      #110=IFCCIRCLE(#108,300.);
      #111=IFCVECTOR(#104,1.);
      #112=IFCLINE(#100,#111);
      #120=IFCEDGECURVE(#102,#102,#109,.T.);
      #121=IFCEDGECURVE(#103,#103,#110,.T.);
      #122=IFCEDGECURVE(#102,#103,#112,.T.);
      #130=IFCORIENTEDEDGE(*,*,#120,.T.);
      #131=IFCORIENTEDEDGE(*,*,#122,.T.);
      #132=IFCORIENTEDEDGE(*,*,#121,.F.);
      #133=IFCORIENTEDEDGE(*,*,#122,.F.);
      #134=IFCEDGELOOP((#130,#131,#132,#133));
      #135=IFCFACEOUTERBOUND(#134,.T.);
      #136=IFCCYLINDRICALSURFACE(#106,300.);
      #40=IFCADVANCEDFACE((#135),#136,.T.);
      #140=IFCORIENTEDEDGE(*,*,#121,.T.);
      #141=IFCEDGELOOP((#140));
      #142=IFCFACEOUTERBOUND(#141,.T.);
      #143=IFCPLANE(#108);
      #50=IFCADVANCEDFACE((#142),#143,.T.);
      #150=IFCORIENTEDEDGE(*,*,#120,.F.);
      #151=IFCEDGELOOP((#150));
      #152=IFCFACEOUTERBOUND(#151,.T.);
      #153=IFCPLANE(#106);
      #60=IFCADVANCEDFACE((#152),#153,.F.);
      #200=IFCRELASSOCIATESMATERIAL('0000000000000000000003',$,$,$,(#30),#201);
      #201=IFCMATERIAL('Steel S355',$,$);
      ENDSEC;
      END-ISO-10303-21;
      """;

  @Test
  void aRoundBarHasTheAreaAndVolumeOfItsCylinder(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("post.ifc"), POST);
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, (step, done, total) -> {});
    var surfaces = SurfaceTakeoff.measure(building, new SurfaceOptions(1), Progress.silent());
    var m = (Measurement.Measured) surfaces.measurements().values().iterator().next();
    assertThat(m.ledger().exposed().squareMetres())
        .isCloseTo(2 * Math.PI * RADIUS * HEIGHT, withPercentage(1e-6));
    assertThat(m.ledger().ends().squareMetres())
        .isCloseTo(2 * Math.PI * RADIUS * RADIUS, withPercentage(1e-6));
    assertThat(m.volume().cubicMetres())
        .isCloseTo(Math.PI * RADIUS * RADIUS * HEIGHT, withPercentage(1e-6));
    assertThat(m.section().orElseThrow().cornerFactor()).isCloseTo(Math.PI, withPercentage(1e-4));
  }
}
