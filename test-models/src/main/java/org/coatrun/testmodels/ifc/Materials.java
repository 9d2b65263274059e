package org.coatrun.testmodels.ifc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** Materials, layers and profile sets. */
public final class Materials {
  private static final Token NONE = Token.UNSET;
  private final IfcWriter ifc;
  private final Map<String, Ref> written = new LinkedHashMap<>();

  Materials(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /** Returns a material; each name is written once. */
  public Ref material(String name, String category) {
    Ref known = written.get(name);
    if (known == null) {
      known =
          ifc.isOld() ? ifc.add("IFCMATERIAL", name) : ifc.add("IFCMATERIAL", name, NONE, category);
      written.put(name, known);
    }
    return known;
  }

  /**
   * Adds layers from the top down.
   *
   * @param thickness of each layer in metres, by material name
   */
  public Ref layers(String name, Map<String, Double> thickness, String category) {
    List<Ref> layers = new ArrayList<>();
    thickness.forEach((material, size) -> layers.add(layer(material, size, category)));
    return ifc.isOld()
        ? ifc.add("IFCMATERIALLAYERSET", layers, name)
        : ifc.add("IFCMATERIALLAYERSET", layers, name, NONE);
  }

  private Ref layer(String material, double thickness, String category) {
    Ref of = material(material, category);
    double size = ifc.length(thickness);
    return ifc.isOld()
        ? ifc.add("IFCMATERIALLAYER", of, size, NONE)
        : ifc.add("IFCMATERIALLAYER", of, size, NONE, material, NONE, NONE, NONE);
  }

  /** Adds a profile set; IFC4 and later only. */
  public Ref profileSet(String name, Ref material, Ref profile) {
    Ref single = ifc.add("IFCMATERIALPROFILE", name, NONE, material, profile, NONE, NONE);
    return ifc.add("IFCMATERIALPROFILESET", name, NONE, List.of(single), NONE);
  }

  /** Adds the use of a profile set with a cardinal point; IFC4 and later only. */
  public Ref usage(Ref profileSet, int cardinalPoint) {
    return ifc.add("IFCMATERIALPROFILESETUSAGE", profileSet, cardinalPoint, NONE);
  }

  /** Gives a material, layers or a profile set to elements or types. */
  public void relate(Ref material, List<Ref> elements) {
    ifc.addRooted("IFCRELASSOCIATESMATERIAL", NONE, NONE, elements, material);
  }
}
