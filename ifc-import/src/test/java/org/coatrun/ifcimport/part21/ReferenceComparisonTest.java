package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bimserver.emf.IdEObject;
import org.bimserver.emf.IfcModelInterface;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Compares each record of each real file with what an independent reader decodes (BIMserver's
 * IfcPlugins 0.0.106, test scope only), attribute by attribute. No file is left out or sampled:
 * what the other one refuses is listed with its reason, and ours still reads it.
 */
class ReferenceComparisonTest {

  private static final String TOO_FEW = "fields, but less found";
  private static final String BACKSLASH = "dangling \\";

  /** Refused by the other reader, besides each file of a schema that it has no tables for. */
  private static final Map<String, String> REFUSED =
      Map.of(
          "beam-part-gzip.ifc", "No valid IFC header found",
          "extended_mvd.ifc", TOO_FEW,
          "fail_double_comma.ifc", "String index out of range",
          "fail_multiple_duplicate_ids.ifc", "cannot be stored in Units",
          "fail_reverse_string.ifc", BACKSLASH,
          "fail_utf_encoding.ifc", BACKSLASH,
          "pass_double_reverse.ifc", TOO_FEW,
          "pass_page_encoding.ifc", TOO_FEW,
          "pass_reverse_comment.ifc", TOO_FEW,
          "profiles-us-inch.ifc4.ifc", TOO_FEW);

  /** The other one drops a line end inside a text; ours keeps it as it stands. */
  private static final Map<String, List<String>> DIFFERENCES =
      Map.of("newlines-in-strings.ifc", List.of("#323449 Name: L4x4x3/8B"));

  @TempDir static Path temp;
  private static ReferenceReader reference;

  @BeforeAll
  static void start() {
    reference = new ReferenceReader(temp);
  }

  @TestFactory
  Stream<DynamicTest> bothReadTheSame() throws Exception {
    return SampleFilesTest.models()
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> compare(f)));
  }

  private static void compare(Path path) throws Exception {
    String name = path.getFileName().toString();
    try (StepFile ours = StepFile.open(path, StepOptions.DEFAULT.acceptingTruncated())) {
      String schema = ours.header().schemas().get(0);
      String refused =
          ReferenceReader.knows(schema) ? REFUSED.get(name) : "no tables for " + schema;
      if (refused != null) {
        assertThatThrownBy(() -> reference.read(path, schema)).hasMessageContaining(refused);
        assertThat(ours.count()).isPositive();
        return;
      }
      IfcModelInterface theirs = reference.read(path, schema);
      assertThat(differences(ours, theirs)).isEqualTo(DIFFERENCES.getOrDefault(name, List.of()));
    }
  }

  private static List<String> differences(StepFile ours, IfcModelInterface theirs) {
    List<String> differences = new ArrayList<>();
    long records = 0;
    for (IdEObject object : theirs.getValues()) {
      StepRecord record = ours.record(object.getExpressId());
      assertThat(record.name()).isEqualToIgnoringCase(object.eClass().getName());
      compare(record, object, ReferenceReader.attributes(theirs, object.eClass()), differences);
      records++;
    }
    assertThat(records).as("records that both decode").isEqualTo(ours.count());
    return differences;
  }

  private static void compare(
      StepRecord record,
      IdEObject object,
      List<EStructuralFeature> attributes,
      List<String> differences) {
    assertThat(record.size()).as(record.name()).isEqualTo(attributes.size());
    for (int i = 0; i < attributes.size(); i++) {
      EStructuralFeature attribute = attributes.get(i);
      Object theirs = object.eGet(attribute);
      boolean bothAbsent = !record.value(i).isGiven() && !object.eIsSet(attribute);
      if (!bothAbsent && !ValueComparison.agree(record.value(i), theirs)) {
        differences.add("#" + record.id() + " " + attribute.getName() + ": " + theirs);
      }
    }
  }
}
