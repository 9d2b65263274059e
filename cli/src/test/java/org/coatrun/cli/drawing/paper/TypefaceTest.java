package org.coatrun.cli.drawing.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class TypefaceTest {

  private final Typeface typeface = Typeface.get();

  /** Widths of the sans-serif of the fourteen standard fonts, from memory: A 667, i 222, 0 556. */
  @Test
  void widthsAreThoseOfTheStandardSansSerif() {
    assertThat(typeface.width("A", 1)).isCloseTo(0.667, Offset.offset(5e-4));
    assertThat(typeface.width("i", 1)).isCloseTo(0.222, Offset.offset(5e-4));
    assertThat(typeface.width("0", 10)).isCloseTo(5.56, Offset.offset(5e-3));
    assertThat(typeface.width("A0i", 2))
        .isCloseTo(2 * (0.667 + 0.556 + 0.222), Offset.offset(5e-3));
  }

  @Test
  void whatItLacksIsPutPlainerOrAsAQuestionMark() {
    assertThat(typeface.shown("Ångström Łódź яхта")).isEqualTo("Ångström Łódź яхта");
    assertThat(typeface.shown("工場 3")).isEqualTo("?? 3");
    assertThat(typeface.shown("Ａ")).isEqualTo("A");
    assertThat(typeface.shown("a\nb\u0007")).startsWith("a b").hasSize(4);
    assertThat(typeface.shown("😀")).isEqualTo("?");
  }
}
