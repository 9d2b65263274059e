package org.coatrun.ifcimport.recognise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.shared.model.Properties;
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
   */
  public static SectionName of(Description d, Recognition recognition, Properties properties) {
    if (recognition.section().isGiven()) {
      return recognition.section();
    }
    SectionName stated = stated(properties, recognition.role());
    return stated.isGiven() ? stated : asGiven(d);
  }

  /** The same, without the properties; {@link SectionName#NONE} where no known section is named. */
  static SectionName known(Description d, Role role) {
    SectionName named = named(profile(d), Source.PROFILE);
    if (!named.isGiven()) {
      named = named(d.materialProfile().trim(), Source.MATERIAL_PROFILE);
    }
    if (!named.isGiven()) {
      named = called(d.typeName(), Source.TYPE_NAME, role);
    }
    if (!named.isGiven()) {
      named = called(d.objectType(), Source.TYPE_NAME, role);
    }
    return named.isGiven() ? named : called(d.name(), Source.NAME, role);
  }

  private static String profile(Description d) {
    return d.profile().map(Profile::name).orElse("").trim();
  }

  private static SectionName called(String text, Source source, Role role) {
    Optional<SectionDesignation> d = designation(text);
    return d.isPresent() && (role != Role.PLATE || d.get().family() == Family.FLAT)
        ? new SectionName(d.get().text(), source)
        : SectionName.NONE;
  }

  private static SectionName stated(Properties properties, Role role) {
    Map<String, String> texts = properties.texts(PROPERTIES);
    for (String name : PROPERTIES) {
      SectionName called = called(texts.getOrDefault(name, ""), Source.PROPERTY, role);
      if (called.isGiven()) {
        return called;
      }
    }
    return SectionName.NONE;
  }

  private static SectionName named(String text, Source source) {
    Optional<SectionDesignation> d = designation(text);
    return d.isPresent() ? new SectionName(d.get().text(), source) : SectionName.NONE;
  }

  private static SectionName asGiven(Description d) {
    if (!profile(d).isEmpty()) {
      return new SectionName(profile(d), Source.PROFILE);
    }
    String material = d.materialProfile().trim();
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
