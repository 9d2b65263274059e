package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.coatrun.cli.Program.Run;
import org.coatrun.testmodels.ifc.LengthUnit;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.ifc.Schema;
import org.coatrun.testmodels.scenario.FirstTry;
import org.coatrun.testmodels.scenario.Models;
import org.coatrun.testmodels.shape.Vec3;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program takes off the sample buildings. */
class TakeoffIT {

  private static final String FIRST_COLUMNS =
      "guid,step,class,name,mark,storey,role,section,section_source,length_m,weight_kg,body_m2,"
          + "inside_m2,ends_m2,holes_m2,covered_m2,exposed_m2,heated_perimeter_m,"
          + "section_factor_per_m,w_over_d,status,reason";

  @TempDir private static Path demo;
  private static Run run;

  @TempDir private Path home;

  @BeforeAll
  static void takeOffTheDemonstrationBuilding() throws Exception {
    run = Program.run("takeoff", Program.DEMO, "--out", demo);
  }

  @Test
  void takesOffTheDemonstrationBuilding() throws Exception {
    TakeoffResult result = TakeoffResult.read(demo);

    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("All steel", "Members: " + result.members().size() + " = ");
    assertThat(TakeoffResult.header(demo.resolve("members.csv")).subList(0, 22))
        .containsExactly(FIRST_COLUMNS.split(",", -1));
    result.requireLedger();
    result.requireGroups();
  }

  @Test
  void hasALineForEachBeamColumnMemberAndPlateOfTheFile() throws Exception {
    List<String> listed =
        TakeoffResult.read(demo).members().stream().map(line -> line.get("step")).toList();
    List<String> drawn;
    try (var lines = Files.lines(Program.DEMO)) {
      drawn =
          lines
              .filter(line -> line.matches("#\\d+= ?IFC(BEAM|COLUMN|MEMBER|PLATE)\\(.*"))
              .map(line -> line.substring(1, line.indexOf('=')))
              .toList();
    }

    assertThat(drawn).hasSizeGreaterThan(100);
    assertThat(listed).containsAll(drawn).doesNotHaveDuplicates();
  }

  @Test
  void givesTheSameBytesAgain() throws Exception {
    Path again = home.resolve("again");
    Run second =
        Program.run(
            Map.of("COATRUN_OPTS", "-XX:ActiveProcessorCount=1"),
            "takeoff",
            Program.DEMO,
            "--out",
            again);

    assertThat(second.out().replace(again.toString(), demo.toString())).isEqualTo(run.out());
    try (var files = Files.list(demo)) {
      for (Path file : files.toList()) {
        assertThat(again.resolve(file.getFileName())).hasSameBinaryContentAs(file);
      }
    }
  }

  @Test
  void areaAndWeightStayWhateverTheUnitSchemaAndPlace() throws Exception {
    TakeoffResult plain = firstTry("plain", ModelOptions.DEFAULT);
    assertThat(plain.total("exposed_m2")).isPositive();

    List<ModelOptions> others =
        List.of(
            ModelOptions.DEFAULT.with(Schema.IFC2X3).with(LengthUnit.INCH),
            ModelOptions.DEFAULT.with(Schema.IFC4X3_ADD2).with(LengthUnit.METRE),
            ModelOptions.DEFAULT.placed(33, 0, new Vec3(4000, -7000, 12)),
            ModelOptions.DEFAULT.placed(-71, 17, Vec3.ZERO).with(LengthUnit.FOOT));
    for (ModelOptions options : others) {
      TakeoffResult other = firstTry("other", options);
      for (String column : List.of("body_m2", "exposed_m2", "covered_m2", "weight_kg")) {
        assertThat(other.total(column))
            .describedAs(column + " " + options)
            .isCloseTo(plain.total(column), within(1e-6 * plain.total("body_m2")));
      }
    }
  }

  @Test
  void countsOneBuildingOnceHoweverOftenItsFileIsGiven() throws Exception {
    Path twice = home.resolve("twice");
    Path copy = Files.copy(Program.FIRST_TRY, home.resolve("copy.ifc"));
    Program.run("takeoff", Program.FIRST_TRY, copy, "--out", twice);
    Path once = home.resolve("once");
    Program.run("takeoff", Program.FIRST_TRY, "--out", once);

    assertThat(TakeoffResult.read(twice).json().path("totals"))
        .isEqualTo(TakeoffResult.read(once).json().path("totals"));
  }

  @Test
  void showsUnitsOfTheModelUnlessToldOtherwise() throws Exception {
    Path inch = Program.ROOT.resolve("test-models/first-try-inch.ifc");

    assertThat(Program.run("survey", inch).out()).contains("Elevation, ft");
    assertThat(Program.run("survey", inch, "--units", "si").out()).contains("Elevation, m");
    assertThat(Program.run("survey", Program.FIRST_TRY).out()).contains("Elevation, m");
  }

  private TakeoffResult firstTry(String name, ModelOptions options) throws Exception {
    Path model = home.resolve(name + ".ifc");
    Models.stream(new FirstTry(), options, model);
    Run other = Program.run("takeoff", model, "--out", home.resolve(name));
    assertThat(other.exitCode()).describedAs(other.err()).isZero();
    TakeoffResult result = TakeoffResult.read(home.resolve(name));
    result.requireLedger();
    return result;
  }
}
