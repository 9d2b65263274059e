package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A model far from the origin is brought near, and nothing misplaced in it draws it away. */
class FarOriginTest {

  /** 500 km and 4,000 km, as a national grid has them; in millimetres. */
  private static final String THERE = "500000000.,4000000000.,0.";

  @TempDir private Path folder;

  private Building at(String... places) throws IOException {
    var records =
        new StringBuilder(
            """
            #40=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);
            #50=IFCEXTRUDEDAREASOLID(#40,#13,#11,1000.);
            #90=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#50));
            #91=IFCPRODUCTDEFINITIONSHAPE($,$,(#90));
            """);
    for (int i = 0; i < places.length; i++) {
      int n = 100 + 10 * i;
      records.append("#" + (n + 1) + "=IFCCARTESIANPOINT((" + places[i] + "));\n");
      records.append("#" + (n + 2) + "=IFCAXIS2PLACEMENT3D(#" + (n + 1) + ",$,$);\n");
      records.append("#" + (n + 3) + "=IFCLOCALPLACEMENT($,#" + (n + 2) + ");\n");
      records.append("#" + n + "=IFCMEMBER('0000000000000000000" + n + "',$,'M',$,$,#" + (n + 3));
      records.append(",#91,'T',$);\n");
    }
    return new Snippet("IFC4", records.toString()).read(folder);
  }

  @Test
  void theFirstBodyOfAFarModelStandsAtTheOrigin() throws IOException {
    Building b = at(THERE, "500009000.,4000009000.,0.");
    assertThat(b.origin()).isEqualTo(new Vec3(500_000, 4_000_000, 0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1.E300,0.,0.", "0.,1.E300,0.", "7.E10,0.,0.", "0.,0.,0."})
  void aMisplacedFirstBodyDoesNotDrawTheOthersAway(String misplaced) throws IOException {
    Building b = at(misplaced, THERE, THERE, THERE);
    assertThat(b.origin()).isEqualTo(new Vec3(500_000, 4_000_000, 0));
    assertThat(b.members().get(1).body().placement().origin()).isEqualTo(Vec3.ZERO);
  }

  @Test
  void aModelNearTheOriginKeepsItsPlaceWhateverIsMisplacedInIt() throws IOException {
    assertThat(at("1.E300,1.E300,0.", "1.,2.,3.", "4.,5.,6.").origin()).isEqualTo(Vec3.ZERO);
  }
}
