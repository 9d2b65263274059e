package org.coatrun.testmodels.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.coatrun.testmodels.facts.BuildingFacts;
import org.coatrun.testmodels.ifc.LengthUnit;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.ifc.Schema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds for each scenario in each schema. */
class ScenarioTest {
  private static final Pattern ROOTED = Pattern.compile("=IFC\\w+\\('([^']{22})',#");
  private static final Pattern REFERENCE = Pattern.compile("#(\\d+)");

  private static Stream<Scenario> all() {
    SteelTower tower = new SteelTower(TowerSize.ofMegabytes(1));
    return Stream.of(new DemonstrationBuilding(), new FirstTry(), new LShaped(), tower);
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void globalIdsAreWellFormedAndNeverDoubled(Schema schema) {
    all().forEach(scenario -> assertGlobalIds(text(scenario, ModelOptions.DEFAULT.with(schema))));
  }

  private static void assertGlobalIds(String text) {
    Set<String> seen = new HashSet<>();
    Matcher ids = ROOTED.matcher(text);
    while (ids.find()) {
      assertThat(ids.group(1)).matches("[0-3][0-9A-Za-z_$]{21}");
      assertThat(seen.add(ids.group(1))).as(ids.group(1)).isTrue();
    }
    assertThat(seen).hasSizeGreaterThan(50);
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void recordsReferBackwardsOnly(Schema schema) {
    String text = text(new DemonstrationBuilding(), ModelOptions.DEFAULT.with(schema));
    int number = 0;
    for (String line : text.split("\n")) {
      if (line.startsWith("#")) {
        number++;
        assertThat(line).startsWith("#" + number + "=");
        assertReferences(line, number);
      }
    }
  }

  private static void assertReferences(String line, int number) {
    Matcher references =
        REFERENCE.matcher(line.substring(line.indexOf('(')).replaceAll("'[^']*'", ""));
    while (references.find()) {
      assertThat(Integer.parseInt(references.group(1))).as(line).isLessThan(number);
    }
  }

  @Test
  void elementsAreTheSameInEachSchemaAndUnit() {
    BuildingFacts metric = Models.facts(new DemonstrationBuilding(), ModelOptions.DEFAULT);
    for (LengthUnit unit : LengthUnit.values()) {
      ModelOptions options = ModelOptions.DEFAULT.with(Schema.IFC4X3_ADD2).with(unit);
      BuildingFacts other = Models.facts(new DemonstrationBuilding(), options);
      assertThat(other.elements()).isEqualTo(metric.elements());
    }
    ModelOptions old = ModelOptions.DEFAULT.with(Schema.IFC2X3);
    assertThat(Models.facts(new DemonstrationBuilding(), old).elements())
        .extracting(e -> List.of(e.guid(), e.tag(), e.section()))
        .isEqualTo(
            metric.elements().stream().map(e -> List.of(e.guid(), e.tag(), e.section())).toList());
  }

  @Test
  void aTowerHasAboutTheSizeAskedFor() {
    for (double megabytes : new double[] {2, 8}) {
      SteelTower tower = new SteelTower(TowerSize.ofMegabytes(megabytes));
      double size = Models.bytes(tower, ModelOptions.DEFAULT).length / 1e6;
      assertThat(size).isBetween(0.6 * megabytes, 1.6 * megabytes);
    }
  }

  private static String text(Scenario scenario, ModelOptions options) {
    return new String(Models.bytes(scenario, options), StandardCharsets.US_ASCII);
  }
}
