package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.finding.FileFinding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick way over plain records finds what the careful way finds, one statement at a time. */
class PlainRunTest {

  private static final String SPICE = "'#=;()/*\\,. \n1A";

  private record Seen(String kind, long position, long id) {}

  private static final class Sightings implements StatementSink {
    final List<Seen> all = new ArrayList<>();
    final NameTable names;

    Sightings(NameTable names) {
      this.names = names;
    }

    @Override
    public void record(long position, long id, int name) {
      all.add(new Seen("record " + names.name(name), position, id));
    }

    @Override
    public void other(long position) {
      all.add(new Seen("other", position, -1));
    }

    @Override
    public void fault(FileFinding code, long position, long id) {
      all.add(new Seen(code.code(), position, id));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void bothWaysFindTheSame(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 400; i++) {
      byte[] bytes = spiced(random).getBytes(StandardCharsets.ISO_8859_1);
      int window = 1024 << random.nextInt(4);
      assertThat(quick(bytes, window))
          .as(() -> new String(bytes, StandardCharsets.ISO_8859_1))
          .isEqualTo(careful(bytes));
    }
  }

  private static String spiced(Random random) {
    RandomStep step = new RandomStep(random);
    StringBuilder text = new StringBuilder();
    for (int i = 1; i < 30; i++) {
      text.append(
          random.nextBoolean() ? step.write(step.record(i)) : "#" + i + "=IFCA('x',(1.,$));\n");
    }
    for (int edits = random.nextInt(4); edits > 0; edits--) {
      text.setCharAt(random.nextInt(text.length()), SPICE.charAt(random.nextInt(SPICE.length())));
    }
    return text.toString();
  }

  private static List<Seen> quick(byte[] bytes, int window) {
    NameTable names = new NameTable();
    Sightings seen = new Sightings(names);
    new StatementScanner(new ArraySource(bytes, bytes.length), names, window)
        .scan(0, bytes.length, seen);
    return seen.all;
  }

  private static List<Seen> careful(byte[] bytes) {
    NameTable names = new NameTable();
    Sightings seen = new Sightings(names);
    StatementScanner scanner =
        new StatementScanner(new ArraySource(bytes, bytes.length), names, 1 << 16);
    scanner.scanCarefully(0, bytes.length, seen);
    return seen.all;
  }
}
