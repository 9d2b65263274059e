package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.finding.FileFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts with quotes and control directives; the directives are those of ISO 10303-21, 6.4.3. */
class TextDecoderTest {

  private final List<FileFinding> faults = new ArrayList<>();

  private String decode(byte[] bytes) {
    return TextDecoder.decode(bytes, 0, bytes.length, (code, sentence) -> faults.add(code));
  }

  private String decode(String text) {
    return decode(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "plain, plain",
        "'', '",
        "'''', ''",
        "a''b, a'b",
        "\\\\, \\",
        "C:\\\\path, C:\\path",
        "\\S\\D, \u00c4", // the standard's own example: Ä is D plus 128 in ISO 8859-1
        "abc\\S\\'def, abc\u00a7def",
        "\\PE\\\\S\\0x, \u0410x", // ISO 8859-5: 0x30 + 0x80 is CYRILLIC CAPITAL LETTER A
        "\\X\\C4, \u00c4",
        "\\X2\\00C4\\X0\\x, \u00c4x",
        "\\X2\\03B103B2\\X0\\, \u03b1\u03b2",
        "\\X2\\D83DDE00\\X0\\, \ud83d\ude00",
        "\\X4\\0001F600\\X0\\, \ud83d\ude00",
        "\\X4\\000000C4\\X0\\\\X2\\00E4\\X0\\, \u00c4\u00e4",
      })
  void decodesDirectives(String written, String meant) {
    assertThat(decode(written)).isEqualTo(meant);
    assertThat(faults).isEmpty();
  }

  @Test
  void latinPagesLastToTheEndOfTheTextOnly() {
    // ISO 8859-7 is page G: 0x61 + 0x80 = 0xE1 is GREEK SMALL LETTER ALPHA.
    assertThat(decode("\\PG\\\\S\\a\\PA\\\\S\\a")).isEqualTo("\u03b1\u00e1");
    assertThat(decode("\\S\\a")).isEqualTo("\u00e1");
  }

  @ParameterizedTest
  @CsvSource({
    "C:\\path, C:\\path",
    "W\\xc3, W\\xc3",
    "end\\, end\\",
    "\\X2\\00E4zzz, \u00e4zzz",
    "\\X2\\00E4, \u00e4",
    "\\X\\G1, \\X\\G1",
    "\\PZ\\x, \\PZ\\x",
    "\\X2\\D83D\\X0\\x, \uFFFDx",
    "\\X4\\7FFFFFFF\\X0\\x, \uFFFDx",
  })
  void keepsWhatIsNoDirectiveAndSaysSo(String written, String kept) {
    assertThat(decode(written)).isEqualTo(kept);
    assertThat(faults).isNotEmpty().containsOnly(FileFinding.BAD_TEXT);
  }

  @Test
  void readsUtf8() {
    assertThat(decode("Träger \u2265 5 \ud83d\ude00".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo("Träger \u2265 5 \ud83d\ude00");
    assertThat(faults).isEmpty();
  }

  @Test
  void readsWindows1252WhereUtf8DoesNotFit() {
    byte[] bytes = "Träger \u2013 \u20ac5".getBytes(Charset.forName("windows-1252"));
    assertThat(decode(bytes)).isEqualTo("Träger \u2013 \u20ac5");
    assertThat(faults).containsExactly(FileFinding.FOREIGN_TEXT);
  }

  @Test
  void directivesAndHighBytesMix() {
    byte[] bytes = "ä\\X2\\2265\\X0\\''ö".getBytes(StandardCharsets.UTF_8);
    assertThat(decode(bytes)).isEqualTo("ä\u2265'ö");
  }
}
