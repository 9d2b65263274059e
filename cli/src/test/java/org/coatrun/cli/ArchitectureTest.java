package org.coatrun.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.ClassesShould;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds what DEVELOPERS.md says about who may know whom. */
class ArchitectureTest {

  private static final String SHARED = "org.coatrun.shared..";
  private static final String IMPORT = "org.coatrun.ifcimport..";
  private static final String GEOMETRY = "org.coatrun.geometry..";
  private static final String ROUTING = "org.coatrun.routing..";
  private static final String CLI = "org.coatrun.cli..";
  private static final String TEST_MODELS = "org.coatrun.testmodels..";
  private static final String[] CALCULATORS = {"org.locationtech..", "org.jgrapht.."};

  private static final JavaClasses ALL =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.coatrun");

  // The generator of sample buildings is a program of its own, with a command line of its own.
  private static final JavaClasses PROGRAM =
      ALL.that(not(resideInAnyPackage(TEST_MODELS)).as("classes of the program"));

  @Test
  void findsTheProgramsClasses() {
    assertThat(PROGRAM.size()).isGreaterThan(100);
  }

  @Test
  void modulesKnowOnlyWhatStandsBelowThem() {
    check(noClasses().that().resideInAPackage(SHARED).should(), IMPORT, GEOMETRY, ROUTING, CLI);
    check(noClasses().that().resideInAPackage(IMPORT).should(), GEOMETRY, ROUTING, CLI);
    check(noClasses().that().resideInAPackage(GEOMETRY).should(), IMPORT, ROUTING, CLI);
    check(noClasses().that().resideInAPackage(ROUTING).should(), IMPORT, GEOMETRY, CLI);
  }

  @Test
  void theProgramDoesNotKnowItsSamplesNorTheyIt() {
    check(noClasses().that().resideOutsideOfPackage(TEST_MODELS).should(), TEST_MODELS);
    check(
        noClasses().that().resideInAPackage(TEST_MODELS).should(),
        SHARED,
        IMPORT,
        GEOMETRY,
        ROUTING,
        CLI);
  }

  @Test
  void packagesFormNoCycles() {
    slices().matching("org.coatrun.(**)").should().beFreeOfCycles().check(ALL);
  }

  @Test
  void onlyTheCommandLinePrints() {
    ArchRule rule =
        noClasses()
            .that()
            .resideOutsideOfPackage(CLI)
            .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS);
    rule.check(PROGRAM);
  }

  @Test
  void nobodyThrowsGenericExceptions() {
    noClasses().should(GeneralCodingRules.THROW_GENERIC_EXCEPTIONS).check(ALL);
  }

  @Test
  void nobodyEndsTheProgramButMain() {
    noClasses()
        .that()
        .doNotBelongToAnyOf(Main.class)
        .should()
        .callMethod(System.class, "exit", int.class)
        .check(PROGRAM);
  }

  @Test
  void librariesOfOneModuleStayInside() {
    check(noClasses().that().resideInAnyPackage(SHARED, IMPORT, CLI).should(), CALCULATORS);
    check(noClasses().that().resideOutsideOfPackage(CLI).should(), "picocli..");
  }

  @Test
  void signaturesThatOtherModulesUseAreFreeOfLibraryTypes() {
    classes()
        .that()
        .resideInAnyPackage(GEOMETRY, ROUTING)
        .should(new ForeignTypes("org.locationtech.", "org.jgrapht."))
        .check(PROGRAM);
  }

  @Test
  void everyPackageSaysWhatItIsFor() throws IOException {
    Path root = Path.of(System.getProperty("coatrun.root"));
    Set<String> silent = new TreeSet<>();
    for (String module : List.of("shared", "ifc-import", "geometry", "routing", "cli")) {
      ALL.stream()
          .map(JavaClass::getPackageName)
          .map(name -> root.resolve(module + "/src/main/java/" + name.replace('.', '/')))
          .filter(Files::isDirectory)
          .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
          .forEach(folder -> silent.add(root.relativize(folder).toString()));
    }
    assertThat(silent).isEmpty();
  }

  private static void check(ClassesShould should, String... packages) {
    should.dependOnClassesThat().resideInAnyPackage(packages).allowEmptyShould(true).check(ALL);
  }
}
