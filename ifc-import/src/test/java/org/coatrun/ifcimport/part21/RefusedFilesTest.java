package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.coatrun.shared.finding.FileFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that cannot be used: one sentence each, that names the file. */
class RefusedFilesTest {

  @TempDir Path folder;

  private void assertRefused(Path file, String... words) {
    assertThatThrownBy(() -> StepFile.open(file, StepOptions.DEFAULT).close())
        .isInstanceOf(ModelFileException.class)
        .hasMessageContaining(file.getFileName().toString())
        .hasMessageContainingAll(words)
        .hasMessageMatching("[^\\n]+\\.");
  }

  private void assertRefused(String content, String... words) {
    assertRefused(StepText.write(folder, "model.ifc", content), words);
  }

  @Test
  void aMissingFileAFolderAndAnEmptyFile() throws IOException {
    assertRefused(folder.resolve("none.ifc"), "does not exist");
    assertRefused(Files.createDirectory(folder.resolve("sub.ifc")), "is a folder");
    assertRefused("", "is empty");
    assertRefused(" \r\n\t \n", "is empty");
  }

  @ParameterizedTest
  @CsvSource({
    "%PDF-1.7 and so on, a PDF document",
    "<?xml version='1.0'?><ifcXML/>, an XML file",
    "<!DOCTYPE html><p>Sign in</p>, a web page",
    "{\"type\":\"IFC\"}, a JSON file",
    "Rar!abc, a RAR archive",
    "glTFabc, a glTF file",
    "solid cube, not an IFC model",
    "0123456789, not an IFC model",
  })
  void filesOfOtherKindsUnderTheNameOfAModel(String content, String kind) {
    assertRefused(content, kind);
  }

  @Test
  void aTextThatOnlySpeaksOfTheFormat() {
    assertRefused(
        "The format is called ISO-10303-21; read on; it has a HEADER.\n", "not an IFC model");
  }

  @Test
  void textInUtf16() throws IOException {
    Path file = folder.resolve("wide.ifc");
    Files.write(file, StepText.file("#1=IFCA();").getBytes(StandardCharsets.UTF_16));
    assertRefused(file, "UTF-16");
  }

  @Test
  void bytesThatMeanNothing() throws IOException {
    byte[] noise = new byte[100_000];
    new java.util.Random(3).nextBytes(noise);
    Path file = Files.write(folder.resolve("noise.ifc"), noise);
    assertRefused(file, "not an IFC model");
  }

  @Test
  void millionsOfStatementsThatAreNoRecords() {
    assertRefused(StepText.HEAD + "x;".repeat(300_000) + StepText.FOOT, "not an IFC model");
  }

  @Test
  void cutInsideARecord() {
    String whole = StepText.file("#1=IFCA('x');\n#2=IFCB(1.25,2.5);");
    String cut = whole.substring(0, whole.indexOf("5,2.5"));
    assertRefused(cut, "truncated", "line 9");
    StepFile file = accept(cut);
    assertThat(file.count()).isEqualTo(1);
    assertThat(file.contains(2)).as("a number may be cut, so the record does not count").isFalse();
    assertThat(file.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(FileFinding.TRUNCATED);
              assertThat(f.line()).isEqualTo(9);
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n", "ENDSEC;", "ENDSEC;\nEND-ISO-103"})
  void cutBetweenRecordsOrBeforeTheEndMark(String rest) {
    String cut = StepText.HEAD + "#1=IFCA('x');" + rest;
    assertRefused(cut, "truncated");
    StepFile file = accept(cut);
    assertThat(file.record(1).text(0)).contains("x");
    assertThat(StepText.codes(file)).contains("TRUNCATED");
  }

  @Test
  void cutInsideATextACommentAndTheHeader() {
    assertRefused(StepText.HEAD + "#1=IFCA();#2=IFCB('abc", "truncated");
    assertRefused(
        StepText.HEAD + "#1=IFCA();\n/* never\nclosed " + StepText.FOOT, "truncated", "line 9");
    assertRefused(StepText.HEAD.substring(0, 60), "truncated");
    assertThat(accept(StepText.HEAD + "#1=IFCA();#2=IFCB(/* abc").count()).isEqualTo(1);
  }

  @Test
  void anEndMarkWithoutItsSemicolonIsWhole() {
    String content = StepText.HEAD + "#1=IFCA();\nENDSEC;\nEND-ISO-10303-21";
    assertThat(StepText.openAll(folder, content).findings()).isEmpty();
  }

  private StepFile accept(String content) {
    Path file = StepText.write(folder, "cut.ifc", content);
    return StepFile.open(file, StepOptions.DEFAULT.acceptingTruncated());
  }
}
