package org.coatrun.cli.starter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.yaml.RecordStarter;

/**
 * A job file to begin with. It reads back as the defaults, but for the name of the building and the
 * units; what else the model holds stands beside the keys, to be taken up by hand.
 */
public final class JobStarter {

  private static final int LONGEST_NAME = 500;

  private JobStarter() {}

  /** The lines of the file for {@code building}, with its lengths in {@code units}. */
  public static List<String> lines(Building building, UnitSystem units) {
    ModelContents contents = new ModelContents(building, units);
    List<String> lines = new ArrayList<>(head());
    contents.summary().forEach(line -> lines.add(("# " + line).stripTrailing()));
    lines.addAll(RecordStarter.lines(Job.class, values(building, units), remarks(contents)));
    return List.copyOf(lines);
  }

  private static List<String> head() {
    return List.of(
        "# yaml-language-server: $schema=job.schema.json",
        "# A job file to begin with: each key with its default and what it means. Change what",
        "# differs, leave out what does not. A line behind a # states nothing; take the # and the",
        "# blank behind it away, and put a value in place of what stands in brackets.",
        "# [common practice] marks a default that has no source.",
        "# Editors check the file and offer its keys where job.schema.json lies beside it; it is in",
        "# the folder 'schema' of the program, and 'coatrun job --schema' prints it.",
        "#");
  }

  private static Map<String, String> values(Building building, UnitSystem units) {
    Map<String, String> values = new LinkedHashMap<>();
    String name = RecordStarter.text(building.name());
    if (!building.name().isBlank() && name.length() <= LONGEST_NAME) {
      values.put("project.name", name);
    }
    values.put("units", units.name().toLowerCase(Locale.ROOT));
    return values;
  }

  private static Map<String, List<String>> remarks(ModelContents contents) {
    Map<String, List<String>> remarks = new LinkedHashMap<>();
    remarks.put("ratings", contents.rules());
    remarks.put("programme.order", contents.order());
    return remarks;
  }
}
