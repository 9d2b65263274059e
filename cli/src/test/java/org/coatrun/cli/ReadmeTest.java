package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.shared.finding.FindingCode;
import org.junit.jupiter.api.Test;

/**
 * Holds the tables of README.md against the code. After a change of the findings, write theirs anew
 * with {@code mvn test -pl cli -am -Dtest=ReadmeTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dcoatrun.readme=write}.
 */
class ReadmeTest {

  private static final Path README = Path.of(System.getProperty("coatrun.root"), "README.md");
  private static final String START = "<!-- findings: written from the code, held by a test -->\n";
  private static final String END = "<!-- end of findings -->";

  @Test
  void listsEachFindingCode() throws IOException {
    String text = Files.readString(README);
    String table = findingTable();
    if ("write".equals(System.getProperty("coatrun.readme"))) {
      text =
          text.substring(0, text.indexOf(START) + START.length())
              + table
              + text.substring(text.indexOf(END));
      Files.writeString(README, text);
    }

    assertThat(text.substring(text.indexOf(START) + START.length(), text.indexOf(END)))
        .isEqualTo(table);
  }

  @Test
  void givesNoCodeTwice() {
    assertThat(codes()).extracting(FindingCode::code).doesNotHaveDuplicates();
    assertThat(codes()).extracting(FindingCode::code).allMatch(code -> code.matches("F\\d{3}"));
  }

  /** A test names each code, so that none is listed that can never be raised. */
  @Test
  void namesNoCodeThatNoTestRaises() throws IOException {
    Path root = README.getParent();
    StringBuilder tests = new StringBuilder();
    try (Stream<Path> files = Files.find(root, 20, (file, is) -> isTest(root.relativize(file)))) {
      for (Path file : files.toList()) {
        tests.append(Files.readString(file));
      }
    }
    Set<String> words = new HashSet<>(Arrays.asList(tests.toString().split("\\W+")));
    assertThat(codes())
        .filteredOn(c -> !words.contains(c.code()) && !words.contains(((Enum<?>) c).name()))
        .isEmpty();
  }

  private static boolean isTest(Path file) {
    return file.toString().replace('\\', '/').matches("[\\w-]+/src/test/.*\\.java");
  }

  @Test
  void listsEachExitCode() throws IOException {
    String expected =
        Arrays.stream(ExitCode.values())
            .map(code -> "| " + code.code() + " | " + code.meaning() + " |\n")
            .collect(Collectors.joining("", "| Code | Meaning |\n|---|---|\n", "\n"));

    assertThat(Files.readString(README)).contains(expected);
  }

  @Test
  void namesTheCommandsOfThisBuild() throws IOException {
    assertThat(Files.readString(README))
        .contains("\n./coatrun plan test-models/harbour-office.ifc --job ")
        .contains("\nmvn verify\n");
  }

  private static String findingTable() {
    return codes().stream()
        .map(
            code ->
                String.join(
                    " | ",
                    "| " + code.code(),
                    code.severity().name().toLowerCase(Locale.ROOT),
                    code.meaning(),
                    code.remedy() + " |\n"))
        .collect(
            Collectors.joining(
                "", "| Code | Kind | What it means | What to do |\n|---|---|---|---|\n", ""));
  }

  private static List<FindingCode> codes() {
    return new ClassFileImporter()
        .importPackages("org.coatrun.shared.finding").stream()
            .filter(type -> type.isEnum() && type.isAssignableTo(FindingCode.class))
            .map(JavaClass::reflect)
            .flatMap(type -> Arrays.stream(type.getEnumConstants()))
            .map(FindingCode.class::cast)
            .sorted(Comparator.comparing(FindingCode::code))
            .toList();
  }
}
