package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.FileFinding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A record read by the quick way has the values of the full way, and hides no fault of it. */
class PlainRecordTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#1=A();",
        "#1=A($,*,#12,'text','',(),(#1,#2),((1.,2.),(3.,-4.5E-3)));\n",
        "#1=A(.T.,.ELEMENT.,IFCLABEL('x'),IFCBOOLEAN(.F.),1,-1,0.1,1.2E+10);\r\n"
      })
  void whatIsPlainReadsAlike(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
    int[] starts = PlainRecord.starts(bytes, 4);
    assertThat(starts).isNotEmpty();
    assertThat(StepRecord.plain(1, "A", bytes, starts).values()).isEqualTo(full(bytes, none()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#1=A(1,,2);", "#1=A(1", "#1=A('open);", "#1=A(#);", "#1=A(1E999);", "#1=A(1.2.3);",
        "#1=A(T());", "#1=A(T(1,2));", "#1=A(.X);", "#1=A(1) stray;", "#1=A((1);", "#1=A(NAN);",
        "#1=A('\\X2\\D8\\X0\\');", "#1=A(#99999999999999999999);", "#1=A(\"0F);", "#1=A(1 2);"
      })
  void whatIsFaultyIsNotPlain(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
    List<FileFinding> faults = new ArrayList<>();
    full(bytes, (code, sentence) -> faults.add(code));
    assertThat(faults).isNotEmpty();
    assertThat(PlainRecord.starts(bytes, 4)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Name", " Name ", "N a-m;e,", ""})
  void aPlainTextThatComesFirstIsReadAtOnce(String text) {
    assertThat(first("#1=A('" + text + "',$);")).contains(text.trim());
    assertThat(first("#1=A('" + text + "');")).contains(text.trim());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#1=A('Na",
        "#1=A('Name'",
        "#1=A( 'x');",
        "#1 =A('x');",
        "#1=A($,'Name');",
        "#1=A('a''b');",
        "#1=A('\\X2\\004E\\X0\\ame');",
        "#1=A('Na\u00e9');",
        "#1=A('Name\\S\\ ');"
      })
  void whatIsNotPlainIsLeftToTheFullWay(String record) {
    assertThat(first(record)).isEmpty();
  }

  private static Optional<String> first(String record) {
    byte[] bytes = record.getBytes(StandardCharsets.ISO_8859_1);
    int open = record.startsWith("#1=A(") ? 4 : -1;
    FirstText text = FirstText.of(bytes, bytes.length, open);
    return text.isFound() ? Optional.of(text.in(bytes)) : Optional.empty();
  }

  private static List<Value> full(byte[] bytes, FaultSink faults) {
    return RecordParser.afterHead(bytes, faults).record(1).values();
  }

  private static FaultSink none() {
    return (code, sentence) -> {
      throw new AssertionError(sentence);
    };
  }
}
