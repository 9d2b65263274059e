package org.coatrun.shared.bid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoofPlatesTest {

  private static final ElementId DECK = new ElementId(0, 1);

  @ParameterizedTest
  @CsvSource({
    "true,  Sheet,       true",
    "false, Sheet,       false",
    // a class that is not roof may only be the authoring program's default
    "false, Roof deck,   true",
    "true,  Floor sheet, true",
    "false, Floor sheet, false"
  })
  void theModelsClassMakesADeckRoofAndSoDoesItsName(boolean stated, String name, boolean roof) {
    Identity identity =
        new Identity(DECK, "guid", "IfcSlab", name, "", "", Optional.empty(), Optional.empty());
    Deck deck =
        new Deck(
            identity, Deck.Form.FLAT, stated, List.of(), List.of(), Properties.none(), Body.none());
    Surfaces bare =
        new Surfaces(new TreeMap<>(), List.of(), Frame.empty(), new TreeMap<>(), new TreeMap<>());

    assertThat(RoofPlates.of(building(deck), bare).isRoof(DECK)).isEqualTo(roof);
  }

  private static Building building(Deck deck) {
    return new Building(
        "",
        Vec3.ZERO,
        List.of(),
        List.of(),
        List.of(),
        List.of(deck),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
