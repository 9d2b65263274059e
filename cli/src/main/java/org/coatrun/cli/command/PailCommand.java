package org.coatrun.cli.command;

import java.nio.file.Path;
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
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The pail check: what a measured flow of water supports. */
@Command(
    name = "pail",
    header = "Pail check: from water in a pail to its flow and the bags an hour it supports.",
    description = {
      "",
      "Run the water into an empty pail with straight sides for a minute, then measure its depth:",
      "",
      "  coatrun pail --depth 9 in --diameter 11 in --seconds 60",
      "",
      "With --job the bag, the ratio of water and the rate of the machines are the job file's.",
      ""
    })
final class PailCommand extends Subcommand {

  private static final double LEAST_RATIO = 0.1;
  private static final double MOST_RATIO = 5;

  @Option(
      names = "--depth",
      required = true,
      paramLabel = "LENGTH",
      parameterConsumer = QuantityWords.class,
      description = "Depth of the water, such as '9 in' or '230 mm'.")
  private Length depth = Length.ZERO;

  @Option(
      names = "--diameter",
      required = true,
      paramLabel = "LENGTH",
      parameterConsumer = QuantityWords.class,
      description = "Diameter of the pail inside.")
  private Length diameter = Length.ZERO;

  @Option(
      names = "--seconds",
      required = true,
      paramLabel = "NUMBER",
      parameterConsumer = QuantityWords.class,
      description = "How long the water ran.")
  private double seconds;

  @Option(
      names = "--bag",
      paramLabel = "WEIGHT",
      parameterConsumer = QuantityWords.class,
      description = "Weight of a bag; 50 lb, if neither this nor a job file says so.")
  private Optional<Mass> bag = Optional.empty();

  @Option(
      names = "--ratio",
      paramLabel = "NUMBER",
      description =
          "Water to dry material by weight, as the maker states it; 1.2, if neither this nor a job"
              + " file says so, which is common practice.")
  private Optional<Double> ratio = Optional.empty();

  @Option(
      names = "--job",
      paramLabel = "JOB.yaml",
      description = "Job file: its bag, its ratio of water, and the rate of its machines.")
  private Optional<Path> job = Optional.empty();

  @Override
  ExitCode run() throws CommandFailure {
    Optional<Job> stated =
        job.isPresent() ? Optional.of(JobFolder.read(job.get()).job()) : Optional.empty();
    MaterialSpec material = stated.orElseGet(Job::defaults).material();
    Mass each = bag.orElse(material.bag());
    double water = ratio.orElse(material.waterRatio());
    if (each.kilograms() <= 0 || !(water >= LEAST_RATIO && water <= MOST_RATIO)) {
      throw new CommandFailure(
          ExitCode.USAGE, "a bag must weigh something, and the ratio lie from 0.1 to 5");
    }
    PailScreen.print(out(), flow(), seconds, each, water, stated.map(Job::machine));
    return ExitCode.OK;
  }

  private FlowRate flow() throws CommandFailure {
    try {
      return MixingWater.pail(depth, diameter, seconds);
    } catch (IllegalArgumentException e) {
      throw new CommandFailure(ExitCode.USAGE, e.getMessage());
    }
  }
}
