package org.coatrun.cli.console;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTest {

  @Test
  void keepsLettersOfAnyScript() {
    assertThat(Plain.text("Träger 梁 №5 ½″")).isEqualTo("Träger 梁 №5 ½″");
  }

  @Test
  void takesAwayWhatWouldSteerATerminal() {
    assertThat(Plain.text("\u001b[31mred\u0007\u009b")).isEqualTo("\uFFFD[31mred\uFFFD\uFFFD");
  }

  @Test
  void staysOnOneLine() {
    assertThat(Plain.text("a\r\nb\tc\u2028d")).isEqualTo("a  b c\uFFFDd");
  }

  @Test
  void takesAwayWhatTurnsTheDirectionOfWriting() {
    assertThat(Plain.text("W12\u202E62X")).isEqualTo("W12\uFFFD62X");
  }
}
