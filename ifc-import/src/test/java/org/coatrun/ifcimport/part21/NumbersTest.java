package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.finding.FileFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

  private final List<FileFinding> faults = new ArrayList<>();

  private Value parse(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
    return Numbers.parse(bytes, 0, bytes.length, (code, sentence) -> faults.add(code));
  }

  @ParameterizedTest
  @CsvSource({
    "1., 1",
    ".5, 0.5",
    "+1., 1",
    "-1., -1",
    "-.5, -0.5",
    "1E-05, 0.00001",
    "1.E-05, 0.00001",
    "1.e+3, 1000",
    "1.E3, 1000",
    "0., 0",
    "000001.5, 1.5",
    "1E5, 100000",
    "3.14159265358979323846264, 3.141592653589793",
    "1.E-400, 0",
    "1.E-99999999999, 0",
    "1.7976931348623157E308, 1.7976931348623157E308",
    "4.9E-324, 4.9E-324",
    "123456789012345678., 123456789012345678",
    "9007199254740993., 9007199254740992",
  })
  void readsReals(String written, double meant) {
    assertThat(parse(written)).isEqualTo(new Value.Real(meant));
    assertThat(faults).isEmpty();
  }

  @Test
  void keepsTheSignOfZero() {
    assertThat(parse("-0.")).isEqualTo(new Value.Real(-0.0));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "7, 7",
    "-7, -7",
    "+7, 7",
    "007, 7",
    "9223372036854775807, 9223372036854775807",
    "-9223372036854775808, -9223372036854775808",
    "1000000000000000000, 1000000000000000000",
  })
  void readsIntegers(String written, long meant) {
    assertThat(parse(written)).isEqualTo(new Value.Int(meant));
  }

  @Test
  void anIntegerBeyond64BitsBecomesAReal() {
    assertThat(parse("92233720368547758070")).isEqualTo(new Value.Real(92233720368547758070.0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.#QNAN", "-1.#IND", "1.#INF", "NAN", "INF", "-INF", "1.E999", "nan"})
  void whatIsNotFiniteIsAFinding(String written) {
    assertThat(parse(written)).isInstanceOf(Value.Faulty.class);
    assertThat(faults).containsExactly(FileFinding.NOT_A_NUMBER);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"+", "-", ".", "1.2.3", "1E", "1E+", "1.5x", "0x10", "1d", "1.0f", "--1", "E5"})
  void whatIsNoNumberIsAFinding(String written) {
    assertThat(parse(written)).isInstanceOf(Value.Faulty.class);
    assertThat(faults).containsExactly(FileFinding.BAD_VALUE);
  }

  /** The library's own conversion is the oracle. */
  @Test
  void agreesWithTheLibraryToTheLastBit() {
    Random random = new Random(1);
    for (int i = 0; i < 200_000; i++) {
      String text = randomReal(random);
      assertThat(parse(text)).as(text).isEqualTo(new Value.Real(Double.parseDouble(text)));
    }
  }

  private static String randomReal(Random random) {
    StringBuilder out = new StringBuilder(random.nextBoolean() ? "-" : "");
    digits(random, out, random.nextInt(12));
    out.append('.');
    digits(random, out, 1 + random.nextInt(12));
    if (random.nextInt(3) == 0) {
      out.append(random.nextBoolean() ? "E" : "e").append(random.nextInt(60) - 30);
    }
    return out.toString();
  }

  private static void digits(Random random, StringBuilder out, int count) {
    for (int i = 0; i < count; i++) {
      out.append((char) ('0' + random.nextInt(10)));
    }
  }
}
