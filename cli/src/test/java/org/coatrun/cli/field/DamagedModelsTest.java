package org.coatrun.cli.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.part21.ModelFileException;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.model.Building;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever is done to the records of a model, a takeoff of it ends, in a ledger or in one sentence:
 * references turned elsewhere, so that cycles arise; numbers out of all measure; records lost;
 * bytes changed. {@code -Dcoatrun.fuzz=100} does a hundred times as much.
 */
class DamagedModelsTest {

  private static final int EACH = 4 * Integer.getInteger("coatrun.fuzz", 1);
  private static final Duration MOST = Duration.ofMinutes(2);
  private static final Pattern REFERENCE = Pattern.compile("(?<![\\w'])#\\d+(?!\\s*=)\\b");
  private static final Pattern NUMBER = Pattern.compile("(?<=[(,])-?\\d+\\.\\d*(E-?\\d+)?(?=[,)])");
  private static final Pattern RECORD = Pattern.compile("(?m)^#\\d+\\s*=.*\\R");
  private static final Pattern ENTITY = Pattern.compile("(?<==)IFC\\w+");
  private static final List<String> ODD =
      List.of("0.", "-1.", "1.E300", "1.E-300", "1.E9", "-0.", "3.", "$", "*", "()", "'x'", "#1");
  private static final String SPICE = "'#=;()/*\\,.$-0189 \n";

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "beams-95-openings.2x3.ifc",
        "beam-standard-case.ifc4.ifc",
        "i-and-t-beams-cardinal-points.4x3.ifc",
        "grid-placement.4x3.ifc",
        "wall-parts-inch.4x3.ifc",
        "structural-curve-member.4x3.ifc",
        "beam-ten-copes.2x3.ifc",
        "profiles-us-inch.ifc4.ifc",
        "composite-slab-named.ifc",
        "mapped-transformation.4x3.ifc",
        "beam-revolved-tapered.ifc4.ifc",
        "beam-revolved.4x3.ifc",
        "beam-straight-tessellated.4x3.ifc",
        "slab-unshared-vertices.4x3.ifc",
        "beams-extrusion-paths.4x3.ifc",
        "beams-profiles.4x3.ifc",
        "slab-openings.4x3.ifc",
        "column-extruded.4x3.ifc"
      })
  void aDamagedRealModelEndsInALedgerOrASentence(String name) throws IOException {
    damage(FieldFiles.of("models/" + name), 3 * EACH);
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-try.ifc", "first-try-inch.ifc"})
  void aDamagedModelOfOursEndsInALedgerOrASentence(String name) throws IOException {
    damage(Path.of(System.getProperty("coatrun.root"), "test-models", name), EACH);
  }

  private void damage(Path model, int times) throws IOException {
    String text = Files.readString(model, StandardCharsets.ISO_8859_1);
    Path mutant = folder.resolve("mutant.ifc");
    for (int seed = 0; seed < times; seed++) {
      var random = new Random(seed);
      String damaged = text;
      for (int edits = 1 + random.nextInt(5); edits > 0; edits--) {
        damaged = edited(damaged, random);
      }
      Files.writeString(mutant, damaged, StandardCharsets.ISO_8859_1);
      int number = seed;
      assertTimeoutPreemptively(
          MOST, () -> takeOff(mutant), () -> model.getFileName() + ", seed " + number);
    }
  }

  private static void takeOff(Path model) {
    Takeoff takeoff;
    try {
      Building building =
          IfcImport.read(List.of(model), ImportOptions.DEFAULT, ProgressListener.silent());
      takeoff =
          TakeoffAssembly.assemble(
              building,
              SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), (done, total) -> {}));
    } catch (ModelFileException e) {
      assertThat(e.getMessage()).isNotBlank().doesNotContain("\n");
      return;
    }
    var members = takeoff.memberTotals();
    assertThat(members.counted() + members.leftOut() + members.unresolved())
        .isEqualTo(members.all())
        .isEqualTo(takeoff.members().size());
    assertThat(members.exposed().squareMetres()).isFinite();
  }

  private static String edited(String text, Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> replaced(text, REFERENCE, random, one(text, REFERENCE, random));
      case 1 -> replaced(text, NUMBER, random, ODD.get(random.nextInt(ODD.size())));
      case 2 -> replaced(text, RECORD, random, "");
      case 3 -> replaced(text, ENTITY, random, one(text, ENTITY, random));
      case 4 -> replaced(text, NUMBER, random, one(text, NUMBER, random));
      default -> spiced(text, random);
    };
  }

  private static String spiced(String text, Random random) {
    int at = random.nextInt(text.length());
    return text.substring(0, at)
        + SPICE.charAt(random.nextInt(SPICE.length()))
        + text.substring(at + random.nextInt(2));
  }

  private static String one(String text, Pattern what, Random random) {
    List<String> all = what.matcher(text).results().map(MatchResult::group).toList();
    return all.isEmpty() ? "" : all.get(random.nextInt(all.size()));
  }

  private static String replaced(String text, Pattern what, Random random, String by) {
    List<MatchResult> all = what.matcher(text).results().collect(Collectors.toList());
    if (all.isEmpty()) {
      return text;
    }
    MatchResult m = all.get(random.nextInt(all.size()));
    return text.substring(0, m.start()) + by + text.substring(m.end());
  }
}
