package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Several files of one building, and one file on any number of threads. */
class MergeTest {

  @TempDir Path folder;

  private static Building read(List<Path> files, int threads) {
    return IfcImport.read(files, new ImportOptions(false, threads), ProgressListener.silent());
  }

  /** A storey at a height, with one member, one wall and one slab in it. */
  private Path file(String schema, String letter, String storey, double height) throws IOException {
    String end = schema.equals("IFC2X3") ? "" : ",$";
    String records =
        """
        #300=IFCBUILDINGSTOREY('000000000000000000030S',$,'NAME',$,$,$,$,$,.ELEMENT.,HEIGHT);
        #301=IFCBEAM('0000000000000000000SAME',$,'both',$,$,#16,$,'B'END);
        #302=IFCBEAM('000000000000000000030LETTER',$,'own LETTER',$,$,#16,$,'C'END);
        #303=IFCSLAB('0000000000000000000SLAB',$,'slab',$,$,#16,$,$,.FLOOR.);
        #304=IFCOPENINGELEMENT('00000000000000000004LETTERO',$,'shaft',$,$,#16,$,$END);
        #305=IFCRELVOIDSELEMENT('00000000000000000005LETTERR',$,$,$,#303,#304);
        #306=IFCRELCONTAINEDINSPATIALSTRUCTURE('00000000000000000006LETTERC',$,$,$,(#301,#302,#303),#300);
        """
            .replace("NAME", storey)
            .replace("HEIGHT", Double.toString(height))
            .replace("LETTER", letter)
            .replace("END", end);
    return new Snippet(schema, records).write(folder);
  }

  /** The structure in one schema, the architecture in another. */
  @ParameterizedTest
  @CsvSource({"IFC2X3, IFC4", "IFC4, IFC4X3", "IFC4X3, IFC2X3", "IFC4, IFC4"})
  void twoFilesAreOneBuilding(String first, String second) throws IOException {
    Path one = file(first, "1", "Level 2", 4000);
    Path two = file(second, "2", "LEVEL 2", 4000);
    Building b = read(List.of(one, two), 2);

    assertThat(b.files()).hasSize(2);
    assertThat(b.storeys()).hasSize(1);
    assertThat(b.members())
        .extracting(m -> m.identity().name())
        .containsExactly("both", "own 1", "own 2");
    assertThat(b.members())
        .extracting(m -> m.identity().storey().orElseThrow())
        .containsOnly(b.storeys().get(0).id());
    assertThat(b.slabs()).hasSize(1);
    // the second file's shaft cuts the slab that counts
    assertThat(b.openings()).hasSize(2);
    assertThat(b.openings()).extracting(o -> o.host()).containsOnly(b.slabs().get(0).id());
    assertThat(b.findings())
        .filteredOn(f -> f.code() == ModelFinding.SAME_ELEMENT_IN_FILES)
        .hasSize(2)
        .allMatch(f -> f.file().equals(two.getFileName().toString()));
  }

  @Test
  void storeysOfOneNameAtTwoHeightsAreTwo() throws IOException {
    Path one = file("IFC4", "1", "Level 2", 4000);
    Path two = file("IFC4", "2", "Level 2", 4600);
    Building b = read(List.of(one, two), 1);
    assertThat(b.storeys())
        .extracting(s -> Math.round(s.elevation().millimetres()))
        .containsExactly(4000L, 4600L);
  }

  @Test
  void theOrderOfTheFilesDecidesWhichElementStands() throws IOException {
    Path one = file("IFC4", "1", "Level 2", 4000);
    Path two = file("IFC4", "2", "Level 2", 4000);
    Building b = read(List.of(two, one), 1);
    assertThat(b.members()).extracting(m -> m.identity().name()).contains("both", "own 2");
    assertThat(b.files()).first().matches(f -> f.name().equals(two.getFileName().toString()));
    assertThat(first(b.members(), "both").id().file()).isZero();
  }

  private static Member first(List<Member> members, String name) {
    return members.stream().filter(m -> m.identity().name().equals(name)).findFirst().orElseThrow();
  }

  /** More than the number below which one thread does it all. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 8})
  void theNumberOfThreadsChangesNothing(int threads) throws IOException {
    StringBuilder records = new StringBuilder();
    records.append("#200=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#15,100.,50.);\n");
    records.append("#201=IFCEXTRUDEDAREASOLID(#200,#13,#11,1000.);\n");
    records.append("#202=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#201));\n");
    for (int i = 0; i < 900; i++) {
      int n = 1000 + 10 * i;
      // each third without a body, each fifth by a broken placement, each seventh a double
      String guid = String.format("%022d", i % 7 == 0 ? 7 : n);
      records.append("#%d=IFCPRODUCTDEFINITIONSHAPE($,$,(#202));\n".formatted(n));
      records.append(
          "#%d=IFCBEAM('%s',$,'W12X26',$,$,#%d,%s,'B%d',$);\n"
              .formatted(n + 1, guid, i % 5 == 0 ? 10 : 16, i % 3 == 0 ? "$" : "#" + n, i));
    }
    Path file = new Snippet("IFC4", records.toString()).write(folder);
    Building alone = read(List.of(file), 1);
    Building many = read(List.of(file), threads);
    assertThat(alone.members()).hasSize(900);
    assertThat(describe(many)).isEqualTo(describe(alone));
    assertThat(many.findings()).isEqualTo(alone.findings());
    assertThat(alone.findings()).hasSizeGreaterThan(3);
  }

  private static List<String> describe(Building b) {
    return Stream.of(b.members(), b.decks(), b.slabs(), b.walls(), b.openings())
        .flatMap(List::stream)
        .map(Element.class::cast)
        .map(e -> e.identity() + " " + e.body().shape() + " " + e.body().placement())
        .toList();
  }
}
