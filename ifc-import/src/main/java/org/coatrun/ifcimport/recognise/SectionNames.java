package org.coatrun.ifcimport.recognise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionDesignation;
import org.coatrun.shared.model.SectionDesignation.Family;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.SectionName.Source;
import org.coatrun.shared.shape.Profile;

/** The designation of an element's section, from the most trusted place that has one. */
public final class SectionNames {

  private static final int REMEMBERED = 20_000;

  /**
   * {@code Reference} is the standard's (Pset_BeamCommon and its like); the others are practice.
   */
  private static final List<String> PROPERTIES =
      List.of("Section", "Profile", "Section Name", "Profile Name", "Reference");

  private static final Map<String, Optional<SectionDesignation>> KNOWN = new ConcurrentHashMap<>();

  private SectionNames() {}

  /**
   * The designation in the profile, the material's profile, the type's name, the element's name or
   * its properties, in that order; where none of them names a known section, what the profile calls
   * itself. A plate that is named after the beam it belongs to does not have that beam's section:
   * of what it is called only flat sections count.
   *
   * @param property the text of the element's property of a name
   */
  public static SectionName of(Description d, Function<String, Optional<String>> property) {
    String profile = d.profile().map(Profile::name).orElse("").trim();
    String material = d.materialProfile().trim();
    boolean plate = Roles.of(d) == Role.PLATE;
    return named(profile, Source.PROFILE)
        .or(() -> named(material, Source.MATERIAL_PROFILE))
        .or(() -> called(d.typeName(), Source.TYPE_NAME, plate))
        .or(() -> called(d.objectType(), Source.TYPE_NAME, plate))
        .or(() -> called(d.name(), Source.NAME, plate))
        .or(() -> stated(property, plate))
        .orElseGet(() -> asGiven(profile, material));
  }

  private static Optional<SectionName> called(String text, Source source, boolean plate) {
    return designation(text)
        .filter(d -> !plate || d.family() == Family.FLAT)
        .map(d -> new SectionName(d.text(), source));
  }

  private static Optional<SectionName> stated(
      Function<String, Optional<String>> property, boolean plate) {
    for (String name : PROPERTIES) {
      Optional<SectionName> called =
          property.apply(name).flatMap(text -> called(text, Source.PROPERTY, plate));
      if (called.isPresent()) {
        return called;
      }
    }
    return Optional.empty();
  }

  private static Optional<SectionName> named(String text, Source source) {
    return designation(text).map(d -> new SectionName(d.text(), source));
  }

  private static SectionName asGiven(String profile, String material) {
    if (!profile.isEmpty()) {
      return new SectionName(profile, Source.PROFILE);
    }
    return material.isEmpty()
        ? SectionName.NONE
        : new SectionName(material, Source.MATERIAL_PROFILE);
  }

  static Optional<SectionDesignation> designation(String text) {
    if (text.isBlank()) {
      return Optional.empty();
    }
    Optional<SectionDesignation> known = KNOWN.get(text);
    if (known == null) {
      known = SectionDesignation.find(text);
      if (KNOWN.size() < REMEMBERED) {
        KNOWN.put(text, known);
      }
    }
    return known;
  }
}
