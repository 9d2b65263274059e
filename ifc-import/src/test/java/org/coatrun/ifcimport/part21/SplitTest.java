package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.finding.Finding;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the work is split over chunks and threads never shows in the result. */
class SplitTest {

  /** Pieces that mislead whoever begins to read in their middle. */
  private static final String[] TRAPS = {
    "#%d=IFCA('\n#5=IFCB(1);\n#6=IFCC(''x'');\n',1);\n",
    "/*\n#%d=IFCX('\n#7=IFCY(';\n*/\n",
    "#%d=IFCA(/* it's\n#8=IFCZ();\n*/2);\n",
    "#%d=IFCA('open,1);\n",
    "#%d=IFCA(1)\n",
    "#%d=IFCA((1,2);\n",
    "#%d=IFCLONG('" + "x;y\n".repeat(60) + "');\n",
    "#%d=IFCA(';','#1=','\n;#2=IFCB(');\n",
    "#%d=IFCA('\\S\\'','''',''' ',' ''');\n",
    "garbage %d 'and a quote\n",
    ";;\n",
    "#%d=;\n#=IFCA();\n",
    "#%d=(IFCA(1)IFCB('/*'));\n",
    "#1=IFCDUPLICATE(%d);\n",
    "/* # ' ; = */ /**/ \\N\\ \n",
    "#%d=ifcA(\"0A\",.T.)\r\n;\r#9%<d=IFCB('\\X2\\00E4\\X0\\\\');\r\n",
  };

  @TempDir Path folder;

  private record Seen(long count, List<String> records, List<Finding> findings) {}

  private static Seen look(Path path, StepOptions options) {
    try (StepFile file = StepFile.open(path, options)) {
      List<String> records =
          file.entityNames().stream()
              .flatMap(n -> java.util.Arrays.stream(file.idsOf(n)).mapToObj(Long::valueOf))
              .map(id -> file.lineOf(id) + ":" + file.nameOf(id) + ":" + file.record(id))
              .toList();
      return new Seen(file.count(), records, file.findings());
    }
  }

  private String misleading(Random random) {
    StringBuilder text = new StringBuilder(StepText.HEAD);
    RandomStep step = new RandomStep(random);
    for (int i = 0; i < 150; i++) {
      boolean trap = random.nextInt(3) == 0;
      text.append(
          trap
              ? String.format(TRAPS[random.nextInt(TRAPS.length)], 100 + i)
              : step.write(step.record(100 + i)));
    }
    return text + StepText.FOOT;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void everySplitGivesTheSame(long seed) {
    Random random = new Random(seed);
    Path path = StepText.write(folder, "model.ifc", misleading(random));
    StepOptions accept = StepOptions.DEFAULT.acceptingTruncated();
    Seen whole = look(path, accept.split(1, 1 << 20));
    assertThat(whole.count()).isGreaterThan(0);
    for (int chunk : new int[] {16, 17, 31, 64, 100, 333, 1000, 4096}) {
      for (int threads : new int[] {1, 2, 5}) {
        assertThat(look(path, accept.split(threads, chunk)))
            .as("chunks of %d, %d threads", chunk, threads)
            .isEqualTo(whole);
      }
    }
    for (int chunk = 16; chunk < 16 + 200; chunk += 3) {
      assertThat(look(path, accept.split(2, chunk)).records()).isEqualTo(whole.records());
    }
  }
}
