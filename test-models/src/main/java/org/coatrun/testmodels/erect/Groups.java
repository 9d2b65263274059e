package org.coatrun.testmodels.erect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.step.Ref;

/** Remembers which elements share a type, a material or a property set, until it is written. */
final class Groups {
  private final IfcWriter ifc;
  private final Map<TypeKey, Ref> types = new LinkedHashMap<>();
  private final Map<String, Ref> profileSets = new LinkedHashMap<>();
  private final Map<String, Ref> usages = new LinkedHashMap<>();
  private final Map<Ref, List<Ref>> typed = new LinkedHashMap<>();
  private final Map<Ref, List<Ref>> made = new LinkedHashMap<>();
  private final Map<PropertyGroup, List<Ref>> described = new LinkedHashMap<>();

  Groups(IfcWriter ifc) {
    this.ifc = ifc;
  }

  private record TypeKey(ElementKind kind, String predefined, String name) {}

  /** Returns a type, written at first use. */
  Ref type(ElementKind kind, String predefined, String name) {
    TypeKey key = new TypeKey(kind, predefined, name);
    Ref known = types.get(key);
    if (known == null) {
      known = ifc.properties().type(kind, predefined, name);
      types.put(key, known);
    }
    return known;
  }

  void typed(Ref type, Ref element) {
    typed.computeIfAbsent(type, k -> new ArrayList<>()).add(element);
  }

  /** Gives a member its material; with its profile where the schema can say so. */
  void member(Section section, Grade grade, boolean top, Ref element) {
    Ref material = ifc.materials().material(grade.title(), grade.category());
    Ref of = ifc.isOld() ? material : usage(section, grade, material, top);
    madeOf(of, element);
  }

  private Ref usage(Section section, Grade grade, Ref material, boolean top) {
    String key = section.name() + "/" + grade;
    Ref set = profileSets.get(key);
    if (set == null) {
      Ref profile = ifc.profiles().of(section);
      set = ifc.materials().profileSet(section.name(), material, profile);
      profileSets.put(key, set);
    }
    Ref known = usages.get(key + top);
    if (known == null) {
      known = ifc.materials().usage(set, top ? 8 : 5);
      usages.put(key + top, known);
    }
    return known;
  }

  void madeOf(Grade grade, Ref element) {
    madeOf(ifc.materials().material(grade.title(), grade.category()), element);
  }

  void madeOf(Ref material, Ref element) {
    made.computeIfAbsent(material, k -> new ArrayList<>()).add(element);
  }

  void described(PropertyGroup group, Ref element) {
    described.computeIfAbsent(group, k -> new ArrayList<>()).add(element);
  }

  /** Writes all relations since the last time. */
  void write() {
    typed.forEach(ifc.properties()::relateType);
    made.forEach(ifc.materials()::relate);
    described.forEach((group, elements) -> group.write(ifc, elements));
    typed.clear();
    made.clear();
    described.clear();
  }
}
