package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is handed out: its bill of materials, the licences of its libraries, its two launchers. */
class DistributionIT {

  private static final Path HOME = Path.of(System.getProperty("coatrun.distribution"));

  /** Licences that let a program be handed out under the Apache License, by their SPDX names. */
  private static final Set<String> PERMISSIVE =
      Set.of("Apache-2.0", "MIT", "BSD-2-Clause", "BSD-3-Clause", "EPL-2.0");

  /** As one library spells the name of EPL-2.0. */
  private static final String ECLIPSE = "Eclipse Public License (EPL) 2.0";

  @Test
  void theBillOfMaterialsListsEachLibrary() throws IOException {
    assertThat(licences().keySet()).containsExactlyInAnyOrderElementsOf(archives());
  }

  @Test
  void eachLibraryMayBeHandedOut() throws IOException {
    licences()
        .forEach(
            (archive, licences) ->
                assertThat(licences)
                    .as(archive)
                    .anyMatch(l -> PERMISSIVE.contains(l) || l.equals(ECLIPSE)));
  }

  @Test
  void theReaderThatIsOnlyForTestsIsNotHandedOut() throws IOException {
    assertThat(archives()).noneMatch(a -> a.contains("ifcplugins") || a.contains("pluginbase"));
    assertThat(licences().values())
        .allSatisfy(l -> assertThat(l).noneMatch(name -> name.contains("AGPL")));
  }

  @Test
  void bothLaunchersStartTheSameProgramTheSameWay() throws IOException {
    String unix = read("bin/coatrun");
    String windows = read("bin/coatrun.cmd");
    assertThat(windows.replace("\r\n", "")).as("line ends of Windows").doesNotContain("\n");
    for (String shared :
        List.of(
            "org.coatrun.cli.Main",
            "-XX:+UseParallelGC",
            "-XX:-UsePerfData",
            "-XX:InitialRAMPercentage=5",
            "-Xmn128m",
            "-XX:MaxTenuringThreshold=0",
            "-XX:TieredStopAtLevel=1",
            "COATRUN_OPTS",
            "JAVA_HOME")) {
      assertThat(unix).contains(shared);
      assertThat(windows).contains(shared);
    }
  }

  private static String read(String file) throws IOException {
    return Files.readString(HOME.resolve(file), StandardCharsets.UTF_8);
  }

  /** The libraries' archives, the project's own left aside. */
  private static Set<String> archives() throws IOException {
    Set<String> names = new TreeSet<>();
    try (Stream<Path> files = Files.list(HOME.resolve("lib"))) {
      files
          .map(f -> f.getFileName().toString())
          .filter(name -> !name.startsWith("coatrun-"))
          .forEach(names::add);
    }
    return names;
  }

  private static Map<String, List<String>> licences() throws IOException {
    assumeTrue(
        Files.exists(HOME.resolve("bill-of-materials.json")),
        "skipped: a build with Maven's -o makes no bill of materials");
    Map<String, List<String>> licences = new TreeMap<>();
    for (JsonNode c :
        new ObjectMapper().readTree(read("bill-of-materials.json")).get("components")) {
      if (!c.path("group").asText().equals("org.coatrun")) {
        List<String> names = new ArrayList<>();
        for (JsonNode choice : c.path("licenses")) {
          names.add(name(choice));
        }
        licences.put(c.get("name").asText() + "-" + c.get("version").asText() + ".jar", names);
      }
    }
    return licences;
  }

  private static String name(JsonNode choice) {
    JsonNode licence = choice.path("license");
    return licence.has("id") ? licence.get("id").asText() : licence.path("name").asText();
  }
}
