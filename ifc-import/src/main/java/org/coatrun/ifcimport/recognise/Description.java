package org.coatrun.ifcimport.recognise;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.model.Material;
import org.coatrun.shared.shape.Profile;

/**
 * What a model says of an element, as far as it tells what it is.
 *
 * @param entity the class, as the standard spells it
 * @param predefined the predefined type of the element, else of its type, or empty
 * @param profile the profile that its body is swept from, else that of its material
 * @param materialProfile name of the profile in its material, or empty
 * @param wholeEntity class of the whole that it is a part of, or empty
 */
public record Description(
    String entity,
    String predefined,
    String name,
    String objectType,
    String typeName,
    List<Material> materials,
    Optional<Profile> profile,
    String materialProfile,
    String wholeEntity) {

  public Description {
    materials = List.copyOf(materials);
  }

  /** Whether all is the same, profile and materials being the very objects. */
  boolean isSameAs(Description other) {
    return name.equals(other.name)
        && profile.orElse(null) == other.profile.orElse(null)
        && entity.equals(other.entity)
        && predefined.equals(other.predefined)
        && objectType.equals(other.objectType)
        && typeName.equals(other.typeName)
        && materialProfile.equals(other.materialProfile)
        && wholeEntity.equals(other.wholeEntity)
        && materials == other.materials;
  }

  /** All names that people gave it, as one text. */
  String names() {
    return typeName + " " + objectType + " " + name;
  }

  boolean isKind(String... entities) {
    return List.of(entities).contains(entity.replace("StandardCase", ""));
  }
}
