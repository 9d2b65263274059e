package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each record is found by its id, and nothing by another, whatever order the ids stand in. */
class IdsTest {

  private static final String NEVER = "/* a comment longer than some chunks, without a record */\n";

  @TempDir Path folder;

  private static List<Long> ascending(Random random, int mostApart) {
    List<Long> ids = new ArrayList<>();
    long id = random.nextInt(3);
    for (int i = 0; i < 200; i++) {
      ids.add(id);
      id += 1 + random.nextInt(mostApart);
    }
    return ids;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 40, 1_000_000})
  void eachIsFoundByItsId(int mostApart) {
    Random random = new Random(mostApart);
    List<Long> ids = ascending(random, mostApart);
    holds(random, ids);
    Collections.swap(ids, 20, 21);
    holds(random, ids);
    Collections.shuffle(ids, random);
    holds(random, ids);
  }

  private void holds(Random random, List<Long> ids) {
    var text = new StringBuilder();
    for (long id : ids) {
      text.append("#").append(id).append("=IFCA(").append(id).append(");\n");
      text.append(random.nextInt(8) == 0 ? NEVER : "");
    }
    Path path = StepText.write(folder, "model.ifc", StepText.file(text.toString()));
    for (int chunk : new int[] {16, 50, 700, 1 << 20}) {
      try (StepFile file = StepFile.open(path, StepOptions.DEFAULT.split(2, chunk))) {
        assertThat(LongStream.of(file.idsOf("IFCA")).boxed()).containsExactlyElementsOf(ids);
        for (long id : ids) {
          assertThat(file.record(id).integer(0)).hasValue(id);
          assertThat(file.contains(id + 1)).isEqualTo(ids.contains(id + 1));
        }
        assertThat(file.contains(-1)).isFalse();
        assertThat(file.contains(Long.MAX_VALUE)).isFalse();
      }
    }
  }
}
