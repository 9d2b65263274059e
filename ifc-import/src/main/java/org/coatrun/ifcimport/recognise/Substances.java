package org.coatrun.ifcimport.recognise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.model.Evidence.Source;
import org.coatrun.shared.model.Material;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Profile;

/**
 * What an element is made of.
 *
 * <p>The material decides. Where it says nothing, a section's designation means steel, then the
 * words of its names count, then the class, and at last a profile that only steel has. All that
 * points the same way is kept as evidence.
 */
public final class Substances {

  private Substances() {}

  public static Classification of(Description d) {
    List<Found> found = new ArrayList<>();
    addMaterials(d, found);
    addDesignations(d, found);
    addWords(Source.PROFILE, d.profile().map(Profile::name).orElse(d.materialProfile()), found);
    addWords(Source.TYPE_NAME, d.typeName() + " " + d.objectType(), found);
    addWords(Source.NAME, d.name(), found);
    addClass(d, found);
    addProfile(d, found);
    Substance decided = decide(found);
    return new Classification(decided, evidence(found, decided));
  }

  /** Whether the materials name steel and something else beside it that bears loads. */
  static boolean isContradictory(Description d) {
    if (d.materials().size() < 2) {
      return false;
    }
    Set<Substance> all = EnumSet.noneOf(Substance.class);
    d.materials().forEach(m -> word(m).ifPresent(all::add));
    return all.contains(Substance.STEEL)
        && (all.contains(Substance.CONCRETE) || all.contains(Substance.TIMBER));
  }

  private record Found(Substance substance, Evidence evidence) {}

  private static List<Evidence> evidence(List<Found> found, Substance decided) {
    var evidence = new ArrayList<Evidence>();
    for (Found f : found) {
      if (f.substance == decided && !evidence.contains(f.evidence)) {
        evidence.add(f.evidence);
      }
    }
    evidence.sort(Comparator.comparing(Evidence::source));
    return evidence;
  }

  private static Substance decide(List<Found> found) {
    for (Found f : found) {
      if (f.substance == Substance.STEEL && f.evidence.source() == Source.MATERIAL) {
        return Substance.STEEL;
      }
    }
    return found.isEmpty() ? Substance.UNKNOWN : found.get(0).substance;
  }

  private static Optional<Substance> word(Material material) {
    return SubstanceWords.find(material.name()).or(() -> SubstanceWords.find(material.category()));
  }

  private static void addMaterials(Description d, List<Found> found) {
    for (Material m : d.materials()) {
      word(m)
          .ifPresent(
              s -> {
                String text = SubstanceWords.find(m.name()).isPresent() ? m.name() : m.category();
                found.add(new Found(s, new Evidence(Source.MATERIAL, text)));
              });
    }
  }

  private static void addDesignations(Description d, List<Found> found) {
    addDesignation(Source.PROFILE, d.profile().map(Profile::name).orElse(""), found);
    addDesignation(Source.PROFILE, d.materialProfile(), found);
    addDesignation(Source.TYPE_NAME, d.typeName(), found);
    addDesignation(Source.TYPE_NAME, d.objectType(), found);
    addDesignation(Source.NAME, d.name(), found);
  }

  private static void addDesignation(Source source, String text, List<Found> found) {
    SectionNames.designation(text)
        .ifPresent(s -> found.add(new Found(Substance.STEEL, new Evidence(source, s.text()))));
  }

  private static void addWords(Source source, String text, List<Found> found) {
    SubstanceWords.find(text)
        .ifPresent(s -> found.add(new Found(s, new Evidence(source, text.trim()))));
  }

  private static void addClass(Description d, List<Found> found) {
    Substance said =
        switch (d.entity()) {
          case "IfcReinforcingBar", "IfcReinforcingMesh", "IfcTendon", "IfcTendonAnchor" ->
              Substance.REINFORCEMENT;
          default -> ofPredefined(d);
        };
    if (said != Substance.UNKNOWN) {
      String text = d.entity() + (d.predefined().isEmpty() ? "" : " " + d.predefined());
      found.add(new Found(said, new Evidence(Source.CLASS, text)));
    }
  }

  private static Substance ofPredefined(Description d) {
    boolean facade = d.wholeEntity().equals("IfcCurtainWall");
    return switch (d.predefined()) {
      case "CURTAIN_PANEL" -> Substance.GLASS;
      case "MULLION" -> Substance.ALUMINIUM;
      case "HOLLOWCORE" -> Substance.CONCRETE;
      default -> facade ? Substance.OTHER : Substance.UNKNOWN;
    };
  }

  private static void addProfile(Description d, List<Found> found) {
    String shape = d.profile().map(ProfileKinds::steelShape).orElse("");
    if (d.profile().map(Flutes::isFluted).orElse(false)) {
      found.add(new Found(Substance.STEEL, new Evidence(Source.PROFILE, "fluted sheet")));
    }
    if (!shape.isEmpty()) {
      found.add(new Found(Substance.STEEL, new Evidence(Source.PROFILE, shape)));
    }
  }
}
