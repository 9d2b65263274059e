package org.coatrun.cli.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.TakeoffResult;
import org.coatrun.cli.field.FieldFiles;
import org.coatrun.testmodels.ifc.LengthUnit;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.ifc.Schema;
import org.coatrun.testmodels.scenario.DemonstrationBuilding;
import org.coatrun.testmodels.scenario.Models;
import org.coatrun.testmodels.scenario.SteelTower;
import org.coatrun.testmodels.scenario.TowerSize;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is done to the records of a model, survey and takeoff end in results whose ledger adds
 * up, or in one sentence. Of a large model a part is damaged that holds each kind of its records.
 */
class DamagedModelsTest {

  private static final int LARGE = 60_000;
  private static final int EACH = 5;

  @TempDir Path home;

  /** All real models; where there are none, a name that is not found and so is skipped. */
  static List<String> models() throws IOException {
    List<String> models = FieldFiles.models();
    return models.isEmpty() ? List.of("any") : models;
  }

  @ParameterizedTest
  @MethodSource("models")
  void aDamagedRealModelEndsInALedgerOrASentence(String name) throws IOException {
    Path model = FieldFiles.of("models/" + name);
    damage(name, Files.readString(model, StandardCharsets.ISO_8859_1));
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void aDamagedModelOfOursEndsInALedgerOrASentence(Schema schema) throws IOException {
    ModelOptions options = ModelOptions.DEFAULT.with(schema).with(LengthUnit.FOOT);
    for (var scenario :
        List.of(new DemonstrationBuilding(), new SteelTower(new TowerSize(2, 2, 1, 1)))) {
      String text = new String(Models.bytes(scenario, options), StandardCharsets.ISO_8859_1);
      damage(scenario.titles().project() + " " + schema, text);
    }
  }

  private void damage(String name, String whole) throws IOException {
    String text = whole.length() > LARGE ? ModelSlice.of(whole) : whole;
    Path mutant = home.resolve("mutant.ifc");
    for (int seed = Attempt.FIRST; seed < Attempt.FIRST + EACH * Attempt.TIMES; seed++) {
      String damaged = new RecordMutator(seed).damaged(text);
      Files.writeString(mutant, damaged, StandardCharsets.ISO_8859_1);
      attempt(name + ", seed " + seed, mutant);
    }
  }

  private void attempt(String said, Path mutant) throws IOException {
    boolean read = Attempt.reading(said, home, "survey", mutant, "--accept-truncated");
    Path out = home.resolve("out");
    boolean taken =
        Attempt.run(said, home, out, "takeoff", mutant, "--accept-truncated", "--out", out);
    assertThat(taken).describedAs(said).isEqualTo(read);
    if (taken) {
      TakeoffResult.read(out).requireLedger();
      remove(out);
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
