package org.coatrun.testmodels.ifc;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** Property sets, quantity sets and what they belong to. */
public final class Properties {
  private static final Token NONE = Token.UNSET;
  private final IfcWriter ifc;

  Properties(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /** Adds a property with a label. */
  public Ref label(String name, String value) {
    return single(name, Token.text("IFCLABEL", value));
  }

  /** Adds a property with a truth value. */
  public Ref truth(String name, boolean value) {
    return single(name, Token.truth("IFCBOOLEAN", value));
  }

  /** Adds a property with a length. */
  public Ref length(String name, double metres) {
    return single(name, Token.number("IFCPOSITIVELENGTHMEASURE", ifc.length(metres)));
  }

  private Ref single(String name, Token value) {
    return ifc.add("IFCPROPERTYSINGLEVALUE", name, NONE, value, NONE);
  }

  /** Adds a property set for some elements. */
  public Ref set(String name, List<Ref> properties, List<Ref> elements) {
    Ref set = ifc.addRooted("IFCPROPERTYSET", name, NONE, properties);
    relate(set, elements);
    return set;
  }

  /** Adds the base quantities of one member. */
  public void memberQuantities(
      String set, double length, double section, double perimeter, double density, Ref element) {
    double volume = section * length;
    List<Ref> all = new ArrayList<>();
    all.add(quantity("IFCQUANTITYLENGTH", "Length", ifc.length(length)));
    all.add(quantity("IFCQUANTITYAREA", "CrossSectionArea", ifc.area(section)));
    all.add(quantity("IFCQUANTITYAREA", "OuterSurfaceArea", ifc.area(perimeter * length)));
    all.add(quantity("IFCQUANTITYVOLUME", "GrossVolume", ifc.volume(volume)));
    all.add(quantity("IFCQUANTITYWEIGHT", "GrossWeight", volume * density));
    String name = ifc.isOld() ? "BaseQuantities" : set;
    relate(ifc.addRooted("IFCELEMENTQUANTITY", name, NONE, NONE, all), List.of(element));
  }

  private Ref quantity(String entity, String name, double value) {
    if (ifc.isOld()) {
      return ifc.add(entity, name, NONE, NONE, value);
    }
    return ifc.add(entity, name, NONE, NONE, value, NONE);
  }

  /** Gives a set to elements. */
  public void relate(Ref set, List<Ref> elements) {
    ifc.addRooted("IFCRELDEFINESBYPROPERTIES", NONE, NONE, elements, set);
  }

  /** Adds a type of an element kind that has ten attributes in each schema. */
  public Ref type(ElementKind kind, String predefined, String name) {
    return ifc.addRooted(
        kind.typeEntity(), name, NONE, NONE, NONE, NONE, NONE, NONE, Token.of(predefined));
  }

  /** Gives a type to elements. */
  public void relateType(Ref type, List<Ref> elements) {
    ifc.addRooted("IFCRELDEFINESBYTYPE", NONE, NONE, elements, type);
  }
}
