package org.coatrun.ifcimport.recognise;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.shared.model.SectionDesignation;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.SectionName.Source;
import org.coatrun.shared.shape.Profile;

/** The designation of an element's section, from the most trusted place that has one. */
public final class SectionNames {

  private static final int REMEMBERED = 20_000;
  private static final Map<String, Optional<SectionDesignation>> KNOWN = new ConcurrentHashMap<>();

  private SectionNames() {}

  /**
   * The designation in the profile, the material's profile, the type's name or the element's name,
   * in that order; where none of them names a known section, what the profile calls itself.
   */
  public static SectionName of(Description d) {
    String profile = d.profile().map(Profile::name).orElse("").trim();
    String material = d.materialProfile().trim();
    return named(profile, Source.PROFILE)
        .or(() -> named(material, Source.MATERIAL_PROFILE))
        .or(() -> named(d.typeName(), Source.TYPE_NAME))
        .or(() -> named(d.objectType(), Source.TYPE_NAME))
        .or(() -> named(d.name(), Source.NAME))
        .orElseGet(() -> asGiven(profile, material));
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
