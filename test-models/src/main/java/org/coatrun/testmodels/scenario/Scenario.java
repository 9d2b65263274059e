package org.coatrun.testmodels.scenario;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Consumer;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.facts.ElementFact;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.ifc.Written;

/** A building that can be written in each schema and unit. */
public interface Scenario {

  /** Returns the words that the file has for project, site and building. */
  Titles titles();

  /** Puts the building up. */
  void build(Erector erector);

  /** Names of a scenario. */
  record Titles(String file, String project, String site, String building) {}

  /**
   * Writes the building as a stream and tells of each element as it is written.
   *
   * @return the number of records
   * @throws IOException if the stream fails
   */
  default int write(OutputStream out, ModelOptions options, Consumer<ElementFact> facts)
      throws IOException {
    try (IfcWriter ifc = new IfcWriter(out, options, titles().file())) {
      Titles t = titles();
      Written house = ifc.spatial().building(t.project(), t.site(), t.building());
      Erector erector = new Erector(ifc, facts, house);
      build(erector);
      erector.finish();
      return ifc.records();
    }
  }
}
