package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.coatrun.cli.Program.Run;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.scenario.Models;
import org.coatrun.testmodels.scenario.SteelTower;
import org.coatrun.testmodels.scenario.TowerSize;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The heap that DEVELOPERS.md states for a file of a size is enough for the packaged program to
 * survey towers and take them off, with all connections and without.
 */
class MemoryIT {

  @TempDir private Path home;

  static Stream<TowerSize> towers() {
    return Stream.of(TowerSize.ofMegabytes(2), TowerSize.ofMegabytes(16), TowerSize.plain(20));
  }

  @ParameterizedTest
  @MethodSource("towers")
  void aTowerFitsInWhatIsStated(TowerSize size) throws IOException, InterruptedException {
    Path tower = home.resolve("tower.ifc");
    Models.stream(new SteelTower(size), ModelOptions.DEFAULT, tower);
    double megabytes = Files.size(tower) / 1e6;

    Run survey = run(64 + megabytes, "survey", tower);
    assertThat(survey.exitCode()).describedAs(survey.err()).isZero();

    Path out = home.resolve("out");
    Run takeoff = run(200 + megabytes, "takeoff", tower, "--out", out);
    assertThat(takeoff.exitCode()).describedAs(takeoff.err()).isZero();
    TakeoffResult.read(out).requireLedger();
  }

  private static Run run(double megabytes, Object... arguments)
      throws IOException, InterruptedException {
    return Program.run(Map.of("COATRUN_OPTS", "-Xmx" + (int) megabytes + "m"), arguments);
  }
}
