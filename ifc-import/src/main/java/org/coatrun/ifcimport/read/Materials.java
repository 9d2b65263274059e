package org.coatrun.ifcimport.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;
import org.coatrun.shared.model.Material;

/** Materials of every form: single, list, layers, profiles, constituents, and their usages. */
final class Materials {

  private static final int MOST_NESTED = 10;

  private final IfcModel model;
  private final double length;
  private final FindingSink findings;
  private final Map<Long, MaterialSet> known = new ConcurrentHashMap<>();

  Materials(IfcModel model, double length, FindingSink findings) {
    this.model = model;
    this.length = length;
    this.findings = findings;
  }

  /**
   * What a definition comes to.
   *
   * @param profile the first profile in it
   * @param profileName what that profile, or its entry, calls itself
   */
  record MaterialSet(List<Material> materials, Optional<Entity> profile, String profileName) {
    static final MaterialSet NONE = new MaterialSet(List.of(), Optional.empty(), "");
  }

  MaterialSet read(long id) {
    MaterialSet set = known.get(id);
    if (set == null) {
      set = fresh(id);
      known.put(id, set);
    }
    return set;
  }

  private MaterialSet fresh(long id) {
    var reading = new Reading();
    if (!model.file().contains(id)) {
      return MaterialSet.NONE; // the relation that names it says so
    }
    try {
      reading.add(model.get(id), 0);
    } catch (BrokenRecordException e) {
      findings.broken(e);
    }
    return new MaterialSet(List.copyOf(reading.materials), reading.profile, reading.profileName);
  }

  private final class Reading {
    private final List<Material> materials = new ArrayList<>();
    private Optional<Entity> profile = Optional.empty();
    private String profileName = "";

    void add(Entity m, int depth) {
      if (depth > MOST_NESTED) {
        throw m.broken("this material is made of itself");
      }
      switch (m.kind()) {
        case "IfcMaterial" -> addSingle(m, "", OptionalDouble.empty());
        case "IfcMaterialList" -> addAll(m, "Materials", depth);
        case "IfcMaterialLayerSetUsage" -> add(m.need("ForLayerSet"), depth + 1);
        case "IfcMaterialLayerSet" -> addAll(m, "MaterialLayers", depth);
        case "IfcMaterialProfileSetUsage", "IfcMaterialProfileSetUsageTapering" ->
            add(m.need("ForProfileSet"), depth + 1);
        case "IfcMaterialProfileSet" -> addAll(m, "MaterialProfiles", depth);
        case "IfcMaterialConstituentSet" -> addAll(m, "MaterialConstituents", depth);
        default -> addPart(m);
      }
    }

    private void addAll(Entity m, String attribute, int depth) {
      for (Entity part : m.refs(attribute)) {
        add(part, depth + 1);
      }
    }

    private void addPart(Entity m) {
      OptionalDouble thickness = OptionalDouble.empty();
      if (m.isA("IfcMaterialLayer") && m.number("LayerThickness").isPresent()) {
        thickness = OptionalDouble.of(m.needNumber("LayerThickness") * length);
      }
      if (m.isA("IfcMaterialProfile")) {
        Optional<Entity> given = m.ref("Profile");
        String name = given.map(p -> p.text("ProfileName")).orElse("");
        if (profile.isEmpty()) {
          profile = given;
          profileName = name.isBlank() ? m.text("Name") : name;
        }
      }
      Optional<Entity> material = m.ref("Material");
      if (material.isPresent()) {
        addSingle(material.get(), m.text("Category"), thickness);
      } else if (!m.text("Name").isBlank()) {
        materials.add(new Material(m.text("Name"), m.text("Category"), thickness));
      }
    }

    private void addSingle(Entity material, String category, OptionalDouble thickness) {
      String own = material.text("Category");
      materials.add(new Material(material.text("Name"), own.isBlank() ? category : own, thickness));
    }
  }
}
