package org.coatrun.ifcimport.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coatrun.ifcimport.part21.StepFile;
import org.coatrun.ifcimport.part21.StepOptions;
import org.coatrun.ifcimport.recognise.Recogniser;
import org.coatrun.ifcimport.schema.Schema;
import org.coatrun.ifcimport.schema.SchemaVersion;
import org.coatrun.ifcimport.shape.Origin;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Vec3;

/** Reads IFC files into a {@link Building}. */
public final class IfcImport {

  private IfcImport() {}

  /**
   * Loads the tables of schemas and words. Each reading does so where it has not been done; a
   * program may have it done while it starts.
   */
  public static void prepare() {
    Schema.of(SchemaVersion.IFC4);
    Recogniser.prepare();
  }

  /**
   * Reads the files of one building, each by its own schema and units.
   *
   * <p>Storeys that share name and elevation are one; an element whose GlobalId stands in several
   * files is read from the first. A whole whose parts are counted has no body of its own. Faults
   * inside a model become findings of the building; bodies are decoded when asked for, so the files
   * must stay where they are while it is used. The origin's height is always zero, so that
   * elevations are heights in the world.
   *
   * @param files at least one, in the order in which they count
   * @return the building; the same for the same files, however many threads worked
   * @throws org.coatrun.ifcimport.part21.ModelFileException where a file is no model, with one
   *     sentence for the user
   */
  public static Building read(List<Path> files, ImportOptions options, ProgressListener progress) {
    if (files.isEmpty()) {
      throw new IllegalArgumentException("no file to read");
    }
    try (var workers = new Workers(options.threads())) {
      return read(files, options, progress, workers);
    }
  }

  private static Building read(
      List<Path> files, ImportOptions options, ProgressListener progress, Workers workers) {
    var origin = new Origin();
    var sources = new ArrayList<SourceFile>();
    var parts = new ArrayList<FilePart>();
    for (Path file : files) {
      progress.step("opening " + file.getFileName(), sources.size(), files.size());
      var source = new SourceFile(sources.size(), open(file, options), origin, workers);
      sources.add(source);
      progress.step("reading " + file.getFileName(), parts.size(), files.size());
      parts.add(new FileReading(source, workers).read());
    }
    origin.choose(FarOrigin.of(parts));
    Building building = building(sources, parts, origin.chosen());
    progress.step("read", files.size(), files.size());
    return building;
  }

  /**
   * The profiles that a file defines under a name, in the order of their numbers: a library of
   * sections.
   *
   * @throws org.coatrun.ifcimport.part21.ModelFileException where the file is no model
   */
  public static List<Profile> profiles(Path file, ImportOptions options) {
    try (var workers = new Workers(options.threads())) {
      var source = new SourceFile(0, open(file, options), new Origin(), workers);
      var profiles = new ArrayList<Profile>();
      for (long id : source.model().idsOf("IfcProfileDef")) {
        source
            .model()
            .find(id)
            .filter(p -> !p.text("ProfileName").isBlank())
            .map(source.shapes()::profile)
            .ifPresent(profiles::add);
      }
      return profiles;
    }
  }

  private static StepFile open(Path file, ImportOptions options) {
    StepOptions step =
        StepOptions.DEFAULT.split(options.threads(), StepOptions.DEFAULT.chunkBytes());
    return StepFile.open(file, options.acceptTruncated() ? step.acceptingTruncated() : step);
  }

  private static Building building(List<SourceFile> sources, List<FilePart> parts, Vec3 origin) {
    if (!origin.equals(Vec3.ZERO)) {
      sources
          .get(0)
          .findings()
          .add(
              ModelFinding.FAR_FROM_ORIGIN,
              0,
              "",
              "x = " + origin.x() + " m, y = " + origin.y() + " m were taken off.");
    }
    var merged = new Merger(sources, parts);
    String name =
        parts.stream().map(FilePart::buildingName).filter(n -> !n.isBlank()).findFirst().orElse("");
    List<Finding> findings =
        sources.stream().flatMap(s -> s.findings().sorted().stream()).sorted().toList();
    return new Building(
        name,
        origin,
        sources.stream().map(SourceFile::describe).toList(),
        merged.storeys(),
        merged.members(),
        merged.decks(),
        merged.slabs(),
        merged.walls(),
        merged.bulks(),
        merged.stairs(),
        merged.spaces(),
        merged.openings(),
        findings);
  }
}
