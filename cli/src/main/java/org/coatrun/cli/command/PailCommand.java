package org.coatrun.cli.command;

import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.cli.report.PailScreen;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.MaterialSpec;
import org.coatrun.shared.rules.MixingWater;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Mass;
import picocli.CommandLine.Model.OptionSpec;

/** The pail check: what a measured flow of water supports. */
final class PailCommand extends Subcommand {

  private static final double LEAST_RATIO = 0.1;
  private static final double MOST_RATIO = 5;

  private final OptionSpec depth =
      quantity("--depth", "LENGTH", Length.class)
          .required(true)
          .description("Depth of the water, such as '9 in' or '230 mm'.")
          .build();

  private final OptionSpec diameter =
      quantity("--diameter", "LENGTH", Length.class)
          .required(true)
          .description("Diameter of the pail inside.")
          .build();

  private final OptionSpec seconds =
      quantity("--seconds", "NUMBER", Double.class)
          .required(true)
          .description("How long the water ran.")
          .build();

  private final OptionSpec bag =
      quantity("--bag", "WEIGHT", Mass.class)
          .description("Weight of a bag; 50 lb, if neither this nor a job file says so.")
          .build();

  private final OptionSpec ratio =
      OptionSpec.builder("--ratio")
          .paramLabel("NUMBER")
          .type(Double.class)
          .description(
              "Water to dry material by weight, as the maker states it; 1.2, if neither this nor a"
                  + " job file says so, which is common practice.")
          .build();

  private final JobOptions jobs =
      new JobOptions(
          "JOB.yaml", "Job file: its bag, its ratio of water, and the rate of its machines.");

  PailCommand() {
    super(
        "pail",
        "Pail check: from water in a pail to its flow and the bags an hour it supports.",
        "",
        "Run the water into an empty pail with straight sides for a minute, then measure its depth:",
        "",
        "  coatrun pail --depth 9 in --diameter 11 in --seconds 60",
        "",
        "With --job the bag, the ratio of water and the rate of the machines are the job file's.",
        "");
    takes(depth, diameter, seconds, bag, ratio, jobs.option());
  }

  private static OptionSpec.Builder quantity(String name, String label, Class<?> type) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .type(type)
        .parameterConsumer(new QuantityWords());
  }

  @Override
  ExitCode run() throws CommandFailure {
    Optional<Job> stated = jobs.read().map(JobFolder::job);
    MaterialSpec material = stated.orElseGet(Job::defaults).material();
    Mass each = Optional.<Mass>ofNullable(bag.getValue()).orElse(material.bag());
    double water = Optional.<Double>ofNullable(ratio.getValue()).orElse(material.waterRatio());
    if (each.kilograms() <= 0 || !(water >= LEAST_RATIO && water <= MOST_RATIO)) {
      throw new CommandFailure(
          ExitCode.USAGE, "a bag must weigh something, and the ratio lie from 0.1 to 5");
    }
    PailScreen.print(
        out(), flow(), seconds.<Double>getValue(), each, water, stated.map(Job::machine));
    return ExitCode.OK;
  }

  private FlowRate flow() throws CommandFailure {
    try {
      return MixingWater.pail(depth.getValue(), diameter.getValue(), seconds.<Double>getValue());
    } catch (IllegalArgumentException e) {
      throw new CommandFailure(ExitCode.USAGE, e.getMessage());
    }
  }
}
