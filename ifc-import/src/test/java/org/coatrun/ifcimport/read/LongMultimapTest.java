package org.coatrun.ifcimport.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against a map of lists: keys that lie even, in heaps, far apart, and all but one together. */
class LongMultimapTest {

  @Test
  void keepsWhatWasPutInItsOrder() {
    Random random = new Random(17);
    for (int run = 0; run < 200; run++) {
      LongMultimap map = new LongMultimap();
      Map<Long, List<Long>> expected = new HashMap<>();
      int puts = random.nextInt(3000);
      for (int i = 0; i < puts; i++) {
        long key = key(run % 5, random);
        map.put(key, i);
        expected.computeIfAbsent(key, k -> new ArrayList<>()).add((long) i);
      }
      expected.forEach(
          (key, values) -> {
            assertThat(map.first(key)).isEqualTo(values.get(0));
            assertThat(map.all(key)).containsExactly(values.toArray(new Long[0]));
          });
      for (int i = 0; i < 3000; i++) {
        long key = key((run + i) % 5, random);
        assertThat(map.first(key) >= 0).isEqualTo(expected.containsKey(key));
      }
    }
  }

  private static long key(int kind, Random random) {
    return switch (kind) {
      case 0 -> 48L * random.nextInt(4000);
      case 1 -> random.nextInt(4000);
      case 2 -> 2L * random.nextInt(1000) + 1_000_000L * random.nextInt(3);
      case 3 -> random.nextLong() >>> 1;
      default -> random.nextInt(2000) == 0 ? Long.MAX_VALUE : random.nextInt(5000);
    };
  }
}
