package org.coatrun.ifcimport.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.model.Evidence.Source;
import org.coatrun.shared.model.Material;
import org.coatrun.shared.model.Substance;

/** Metal deck: from the body, the material layers, the type's name and the name. */
public final class Decks {

  private Decks() {}

  /** Why a slab or plate is taken for deck; empty where nothing says so. */
  public static List<Evidence> evidence(Description d) {
    var all = new ArrayList<Evidence>();
    if (d.profile().map(Flutes::isFluted).orElse(false)) {
      all.add(new Evidence(Source.BODY, "fluted section"));
    }
    for (Material m : d.materials()) {
      if (DeckWords.find(m.name()).isPresent()) {
        all.add(new Evidence(Source.LAYER, m.name()));
      }
    }
    add(Source.TYPE_NAME, d.typeName(), all);
    add(Source.TYPE_NAME, d.objectType(), all);
    add(Source.NAME, d.name(), all);
    return all.stream().distinct().toList();
  }

  private static void add(Source source, String text, List<Evidence> all) {
    DeckWords.find(text).ifPresent(w -> all.add(new Evidence(source, text)));
  }

  /**
   * Whether a plate or member is a sheet of deck: its body is fluted, or it is a plate and more
   * than the bare word calls it so, as "deck" also stands in the names of what carries or closes
   * one.
   */
  static boolean isSheet(Description d) {
    if (!d.isKind("IfcPlate", "IfcMember")) {
      return false;
    }
    boolean fluted = d.profile().map(Flutes::isFluted).orElse(false);
    boolean called =
        Stream.of(d.typeName(), d.objectType(), d.name())
            .flatMap(text -> DeckWords.find(text).stream())
            .anyMatch(word -> !word.equals("deck") && !word.equals("decking"));
    return fluted || (called && d.isKind("IfcPlate"));
  }

  /** How the model draws the deck. */
  public static Deck.Form form(Description d, List<Evidence> evidence) {
    if (evidence.stream().anyMatch(e -> e.source() == Source.BODY)) {
      return Deck.Form.SHEET;
    }
    boolean concrete =
        SubstanceWords.find(d.names()).filter(s -> s == Substance.CONCRETE).isPresent()
            || d.materials().stream()
                .anyMatch(
                    m ->
                        SubstanceWords.find(m.name())
                            .filter(s -> s == Substance.CONCRETE)
                            .isPresent());
    boolean roof = d.predefined().equals("ROOF");
    boolean slab = d.entity().startsWith("IfcSlab") && !roof && d.materials().isEmpty();
    return concrete || slab ? Deck.Form.SLAB_ON_DECK : Deck.Form.FLAT;
  }

  /** Whether a slab is of steel alone, so that it stands for a bare deck or a plate floor. */
  public static boolean isSteelSlab(Description d) {
    return !d.materials().isEmpty()
        && d.materials().stream()
            .allMatch(
                m -> SubstanceWords.find(m.name()).filter(s -> s == Substance.STEEL).isPresent());
  }
}
