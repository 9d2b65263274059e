package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packaged program's pail check. */
class PailIT {

  /**
   * By hand: pi/4 x 11 x 11 x 9 = 855.3 in3; a US gallon is 231 in3, so 3.70 gal in a minute;
   * 3.7026 x 60 x 8.34 / (1.2 x 50) = 30.9 bags an hour. A litre is 1/3.7854 gal.
   */
  @Test
  void givesFlowAndBagsInBothSystems() throws Exception {
    Run run = Program.run("pail", "--depth", "9", "in", "--diameter", "11 in", "--seconds", "60");

    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    assertThat(run.out())
        .contains("3.70 gal (14.02 L) in 60.0 s")
        .contains("3.70 gal/min (14.02 L/min)")
        .contains("30.9 bags/h of 50.0 lb (22.7 kg each, 700 kg/h in all)")
        .contains("planning aid");
  }

  /** Half the time is twice the flow; a bag twice as heavy is half the bags. */
  @Test
  void scalesAsWaterDoes() throws Exception {
    Run run =
        Program.run("pail", "--depth=9in", "--diameter=11in", "--seconds=30", "--bag", "100", "lb");

    assertThat(run.out()).contains("7.41 gal/min (28.03 L/min)", "30.9 bags/h of 100.0 lb");
  }

  /**
   * By hand, with the flow above: 3.7026 x 60 x 8.34 / (1.5 x 40) = 30.9 bags an hour, which is 61
   * % of two machines with 25 bags an hour each; with bags of 20 lb it is twice as many, and
   * enough.
   */
  @Test
  void takesBagWaterAndMachinesFromAJob(@TempDir Path folder) throws Exception {
    Path job =
        Files.writeString(
            folder.resolve("job.yaml"),
            """
            material: {bag: 40 lb, water-ratio: 1.5}
            machine: {rate: 25 bags/h, machines: 2}
            """);
    String check = "pail --depth 9 in --diameter 11 in --seconds 60 --job " + job;

    assertThat(Program.run((Object[]) check.split(" ", -1)).out())
        .contains("30.9 bags/h of 40.0 lb")
        .contains("50.0 bags/h with 2 machines; the water bears 61 % of it")
        .contains("1.50 : 1 by weight");
    assertThat(Program.run((Object[]) (check + " --bag 20 lb").split(" ", -1)).out())
        .contains("61.8 bags/h of 20.0 lb")
        .contains("the water is enough");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--depth 9 --diameter 11 in --seconds 60       | --depth: '9' is not a length; write",
        "--depth 9 lb --diameter 11 in --seconds 60    | --depth: 'lb' is no unit of a length; use",
        "--depth 9 in --diameter 11 in --seconds fast  | --seconds: 'fast' is not a number of seconds.",
        "--depth 9 in --diameter 11 in                 | Missing required option: '--seconds=NUMBER'",
        "--depth 0 in --diameter 11 in --seconds 60    | a pail check needs depth, diameter and",
        "--depth 9 in --diameter -1 in --seconds 60    | a pail check needs depth, diameter and",
        "--depth 9 in --diameter 11 in --seconds 60 --bag 0 lb | a bag must weigh something",
        "--depth 9 in --diameter 11 in --seconds 60 --ratio 9  | a bag must weigh something",
        "--depth 9 in --diameter 11 in --seconds 60 --ratio x  | Invalid value for option '--ratio'"
      })
  void refusesWhatIsNoMeasure(String line, String sentence) throws Exception {
    Run run = Program.run((Object[]) ("pail " + line).split(" +", -1));

    assertThat(run.exitCode()).describedAs(run.err()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("coatrun: " + sentence).doesNotContain("Exception", "\tat ");
  }
}
