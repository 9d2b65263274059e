package org.coatrun.ifcimport.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.coatrun.shared.model.Material;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.Substance;
import org.junit.jupiter.api.Test;

class RecogniserTest {

  private static final List<String> CLASSES = List.of("IfcBeam", "IfcColumn", "IfcPlate");
  private static final List<String> PREDEFINED = List.of("", "JOIST", "PLATE");
  private static final List<String> TYPES = List.of("", "W12X26", "Glulam beam");
  private static final List<List<Material>> MATERIALS =
      List.of(
          List.of(),
          List.of(new Material("Steel ASTM A992", "", OptionalDouble.empty())),
          List.of(
              new Material("Concrete C30", "", OptionalDouble.empty()),
              new Material("Steel", "", OptionalDouble.empty())));

  /** More than are remembered, most of them met again, many of them alike but for one thing. */
  @Test
  void whatIsRememberedIsWhatWouldBeFoundAnew() {
    List<Description> all = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      for (String entity : CLASSES) {
        for (String predefined : PREDEFINED) {
          for (String type : TYPES) {
            for (List<Material> materials : MATERIALS) {
              all.add(description(entity, predefined, "Part " + i, type, materials));
            }
          }
        }
      }
    }
    Recogniser recogniser = new Recogniser();
    Random random = new Random(3);
    for (int i = 0; i < 20_000; i++) {
      Description d = all.get(random.nextInt(all.size()));
      assertThat(recogniser.of(d)).isEqualTo(Recognition.of(d));
    }
  }

  @Test
  void onePassTellsAllThatADescriptionSays() {
    Recognition beam =
        new Recogniser().of(description("IfcBeam", "", "B1", "W12X26", MATERIALS.get(1)));
    assertThat(beam.role()).isEqualTo(Role.BEAM);
    assertThat(beam.substance().substance()).isEqualTo(Substance.STEEL);
    assertThat(beam.section().name()).isEqualTo("W12X26");
    assertThat(beam.isStructural()).isTrue();
    assertThat(beam.isContradictory()).isFalse();
    assertThat(beam.isSheet()).isFalse();
  }

  private static Description description(
      String entity, String predefined, String name, String type, List<Material> materials) {
    return new Description(entity, predefined, name, "", type, materials, Optional.empty(), "", "");
  }
}
