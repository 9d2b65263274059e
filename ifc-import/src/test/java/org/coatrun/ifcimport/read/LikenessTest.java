package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coatrun.shared.model.Member;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bodies whose records are written alike are alike; whatever else differs, they are not. */
class LikenessTest {

  @TempDir Path folder;

  @Test
  void numbersOfRecordsAndBlanksMakeNoDifference() throws IOException {
    String plain =
        """
        #500=IFCEXTRUDEDAREASOLID(#501,#13,#11,3000.);
        #501=IFCRECTANGLEPROFILEDEF(.AREA.,'P',#15,10.,20.);
        """;
    String other =
        """
        #600=IFCEXTRUDEDAREASOLID( #699 , #13,
         #698,3000.);
        #698=IFCDIRECTION((0.,0.,1.));
        #699=IFCRECTANGLEPROFILEDEF(.AREA.,'P',#15,10.,20.);
        """;
    List<Object> looks = looks(plain, other);
    assertThat(looks.get(0)).isEqualTo(looks.get(1)).hasSameHashCodeAs(looks.get(1));
  }

  @Test
  void anyOtherDifferenceCounts() throws IOException {
    List<Object> looks =
        looks(
            "#500=IFCEXTRUDEDAREASOLID(#501,#13,#11,3000.);\n#501=" + named("P #1") + ";\n",
            "#600=IFCEXTRUDEDAREASOLID(#601,#13,#11,3000.);\n#601=" + named("P #2") + ";\n",
            "#700=IFCEXTRUDEDAREASOLID(#701,#13,#11,3001.);\n#701=" + named("P #1") + ";\n",
            "#800=IFCEXTRUDEDAREASOLID(#801,#13,#12,3000.);\n#801=" + named("P #1") + ";\n");
    assertThat(looks).doesNotHaveDuplicates();
  }

  @Test
  void usesOfASharedShapeAreAlikeWhereTheyArePutAlike() throws IOException {
    String map =
        """
        #900=IFCREPRESENTATIONMAP(#13,#901);
        #901=IFCSHAPEREPRESENTATION(#9,'Body','CSG',(#902));
        #902=IFCBLOCK(#13,1.,2.,3.);
        """;
    String target = "=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,%s,$);\n";
    List<Object> looks =
        looks(
            map + "#500=IFCMAPPEDITEM(#900,#501);\n#501" + String.format(target, "1."),
            "#600=IFCMAPPEDITEM(#900,#601);\n#601" + String.format(target, "1."),
            "#700=IFCMAPPEDITEM(#900,#701);\n#701" + String.format(target, "2."));
    assertThat(looks.get(0)).isEqualTo(looks.get(1)).isNotEqualTo(looks.get(2));
  }

  @Test
  void whatIsBrokenOrOddlyWrittenIsLikeNothing() throws IOException {
    List<Member> members =
        members(
            "#500=IFCEXTRUDEDAREASOLID(#599,#13,#11,3000.);\n",
            "#600=IFCBLOCK(#13,1.,/* wide */2.,3.);\n",
            "#700=IFCBOOLEANRESULT(.UNION.,#700,#700);\n");
    assertThat(members).allSatisfy(m -> assertThat(m.body().likeness()).isEmpty());
  }

  @Test
  void filesAreApart() throws IOException {
    String block = "#500=IFCBLOCK(#13,1.,2.,3.);\n";
    assertThat(looks(block).get(0)).isNotEqualTo(looks(block).get(0));
  }

  private static String named(String name) {
    return "IFCRECTANGLEPROFILEDEF(.AREA.,'" + name + "',#15,10.,20.)";
  }

  private List<Object> looks(String... items) throws IOException {
    return members(items).stream()
        .map(Member::body)
        .map(b -> b.likeness())
        .map(Optional::orElseThrow)
        .toList();
  }

  /** Members whose bodies are #500, #600 and so on. */
  private List<Member> members(String... items) throws IOException {
    StringBuilder records = new StringBuilder();
    IntStream.range(0, items.length)
        .forEach(
            i -> {
              int n = 100 * (i + 5);
              records.append(items[i]);
              records.append(
                  String.format(
                      "#%d=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#%d));%n", n + 90, n));
              records.append(
                  String.format("#%d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%d));%n", n + 91, n + 90));
              records.append(
                  String.format(
                      "#%d=IFCMEMBER('0000000000000000000%d',$,'M',$,$,#16,#%d,'T',$);%n",
                      n + 95, n, n + 91));
            });
    return new Snippet("IFC4", records.toString()).read(folder).members();
  }
}
