package org.coatrun.testmodels.scenario;

import java.util.List;
import org.coatrun.testmodels.ifc.LengthUnit;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.ifc.Schema;

/** The sample files that stand in the module's folder. */
public final class Samples {
  /** One sample file and how it is written. */
  public record Sample(String file, Scenario scenario, ModelOptions options) {}

  private Samples() {}

  /** Returns all samples. */
  public static List<Sample> all() {
    ModelOptions metric = ModelOptions.DEFAULT;
    ModelOptions inch = metric.with(Schema.IFC2X3).with(LengthUnit.INCH);
    return List.of(
        new Sample("harbour-office.ifc", new DemonstrationBuilding(), metric),
        new Sample("first-try.ifc", new FirstTry(), metric),
        new Sample("first-try-inch.ifc", new FirstTry(), inch));
  }
}
