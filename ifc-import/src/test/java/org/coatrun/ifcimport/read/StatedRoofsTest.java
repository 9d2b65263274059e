package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Slab;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Decks and slabs that the model's classes call roof, whatever their names say. */
class StatedRoofsTest {

  private static final String BODY =
      """
      #50=IFCBLOCK(#13,4000.,4000.,100.);
      #90=IFCSHAPEREPRESENTATION(#9,'Body','CSG',(#50));
      #91=IFCPRODUCTDEFINITIONSHAPE($,$,(#90));
      """;

  @TempDir Path folder;

  private static String slab(int id, String name, String predefined) {
    return "#%d=IFCSLAB('%022d',$,'%s',$,$,#16,#91,$,%s);%n".formatted(id, id, name, predefined);
  }

  private static String partOf(int id, int part, int whole) {
    return "#%d=IFCRELAGGREGATES('%022d',$,$,$,#%d,(#%d));%n".formatted(id, id, whole, part);
  }

  private Building read(String schema) throws IOException {
    String records =
        BODY
            + slab(100, "Metal deck A", ".ROOF.")
            + slab(101, "Metal deck B", ".FLOOR.")
            // by its type
            + slab(102, "Metal deck C", "$")
            + "#202=IFCSLABTYPE('0000000000000000000202',$,'T',$,$,$,$,$,$,.ROOF.);\n"
            + "#302=IFCRELDEFINESBYTYPE('0000000000000000000302',$,$,$,(#102),#202);\n"
            // by the roof that it is a part of, itself a part
            + slab(103, "Metal deck D", ".NOTDEFINED.")
            + slab(104, "Concrete E", "$")
            + "#203=IFCROOF('0000000000000000000203',$,'R',$,$,#16,$,$,.FLAT_ROOF.);\n"
            + "#204=IFCSLAB('0000000000000000000204',$,'S',$,$,#16,$,$,.FLOOR.);\n"
            + partOf(303, 204, 203)
            + partOf(304, 103, 204)
            + partOf(305, 104, 203)
            + slab(105, "Concrete F", ".LANDING.")
            + partOf(306, 105, 203);
    return new Snippet(schema, records).read(folder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void classTypeOrWholeSaysSo(String schema) throws IOException {
    Building building = read(schema);

    assertThat(
            building.decks().stream()
                .collect(Collectors.toMap(d -> d.identity().name(), Deck::roof)))
        .isEqualTo(
            Map.of(
                "Metal deck A", true,
                "Metal deck B", false,
                "Metal deck C", true,
                "Metal deck D", true));
    assertThat(
            building.slabs().stream()
                .collect(Collectors.toMap(s -> s.identity().name(), Slab::kind)))
        .containsEntry("Concrete E", Slab.Kind.ROOF)
        .containsEntry("Concrete F", Slab.Kind.LANDING);
  }
}
