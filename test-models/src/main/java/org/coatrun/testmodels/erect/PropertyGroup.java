package org.coatrun.testmodels.erect;

import java.util.List;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.step.Ref;

/** Property sets that several elements share. */
public sealed interface PropertyGroup {

  /** Writes the set and gives it to the elements. */
  void write(IfcWriter ifc, List<Ref> elements);

  /** The common set of a class with a fire rating. */
  record Rating(ElementKind kind, String hours) implements PropertyGroup {
    @Override
    public void write(IfcWriter ifc, List<Ref> elements) {
      List<Ref> all =
          List.of(
              ifc.properties().label("FireRating", hours),
              ifc.properties().truth("IsExternal", false),
              ifc.properties().truth("LoadBearing", true));
      ifc.properties().set(setName(), all, elements);
    }

    private String setName() {
      String word =
          kind.name().charAt(0) + kind.name().substring(1).toLowerCase(java.util.Locale.ROOT);
      return "Pset_" + word + "Common";
    }
  }

  /** What covers the steel before anything is sprayed on it. */
  record Finish(String treatment) implements PropertyGroup {
    @Override
    public void write(IfcWriter ifc, List<Ref> elements) {
      List<Ref> all = List.of(ifc.properties().label("SurfaceTreatment", treatment));
      ifc.properties().set("Steelwork finish", all, elements);
    }
  }

  /** The makeup of a deck. */
  record DeckMakeUp(double depth, double pitch, double sheet) implements PropertyGroup {
    @Override
    public void write(IfcWriter ifc, List<Ref> elements) {
      List<Ref> all =
          List.of(
              ifc.properties().length("Rib depth", depth),
              ifc.properties().length("Rib pitch", pitch),
              ifc.properties().length("Sheet thickness", sheet));
      ifc.properties().set("Deck", all, elements);
    }
  }
}
