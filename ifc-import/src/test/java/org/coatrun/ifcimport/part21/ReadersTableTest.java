package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.IntStream;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What real exporters write, row by row; each case is one that some reader gets wrong. */
class ReadersTableTest {

  @TempDir Path folder;

  private StepFile open(String records) {
    return StepText.open(folder, records);
  }

  private static Value real(double number) {
    return new Value.Real(number);
  }

  private static Value text(String text) {
    return new Value.Text(text);
  }

  private static Value list(Value... values) {
    return new Value.ListOf(List.of(values));
  }

  // Header

  @Test
  void readsTheHeader() {
    Header header = open("#1=IFCX();").header();
    assertThat(header.description()).containsExactly("ViewDefinition [CoordinationView]");
    assertThat(header.name()).isEqualTo("a.ifc");
    assertThat(header.timeStamp()).isEqualTo("2026-01-01T00:00:00");
    assertThat(header.authors()).containsExactly("An");
    assertThat(header.organisations()).containsExactly("Org");
    assertThat(header.preprocessor()).isEqualTo("pre");
    assertThat(header.originatingSystem()).isEqualTo("sys");
    assertThat(header.schemas()).containsExactly("IFC4");
  }

  @Test
  void readsAHeaderOnOneLineWithBlanksAndDataBehindIt() {
    StepFile file =
        StepText.openAll(
            folder,
            "ISO-10303-21;HEADER;FILE_DESCRIPTION(('x'),'2;1');FILE_NAME('','',(),(),$,$,$);"
                + "FILE_SCHEMA (( 'IFC4' ) );ENDSEC;DATA;#1=IFCX(1);ENDSEC;END-ISO-10303-21;");
    assertThat(file.header().schemas()).containsExactly("IFC4");
    assertThat(file.header().timeStamp()).isEmpty();
    assertThat(file.record(1).integer(0)).hasValue(1);
    assertThat(file.findings()).isEmpty();
  }

  @Test
  void readsHeaderDatesOfAnyForm() {
    for (String date : List.of("''", "'2020-01-31'", "$")) {
      String head = StepText.HEAD.replace("'2026-01-01T00:00:00'", date);
      StepFile file = StepText.openAll(folder, head + "#1=IFCX();\n" + StepText.FOOT);
      assertThat(file.count()).isEqualTo(1);
      assertThat(file.findings()).isEmpty();
    }
  }

  @Test
  void saysWhatTheHeaderLacksAndReadsOn() {
    String content = "ISO-10303-21;\nFILE_SCHEMA(('IFC4'));\nDATA;\n#1=IFCX();\n" + StepText.FOOT;
    StepFile file = StepText.openAll(folder, content);
    assertThat(file.count()).isEqualTo(1);
    assertThat(file.header().schemas()).containsExactly("IFC4");
    assertThat(file.findings())
        .extracting(Finding::sentence)
        .containsExactly(
            "the header lacks the line FILE_DESCRIPTION",
            "the header lacks the line FILE_NAME",
            "the mark HEADER is missing");
  }

  // Layout

  @Test
  void readsTwoRecordsOnALineAndOneOverMany() {
    StepFile file = open("#1=IFCA(1);#2=IFCB(2); #3 = IFCC (\n1.\n,\r\n(2,\t3)\n)\n;#4=IFCD();");
    assertThat(file.count()).isEqualTo(4);
    assertThat(file.record(3).values())
        .containsExactly(real(1), list(new Value.Int(2), new Value.Int(3)));
    assertThat(file.record(4).size()).isZero();
    assertThat(file.findings()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r", "\r\n"})
  void countsLinesWhateverEndsThem(String end) {
    String content = StepText.file("#1=IFCA(\n1);\n\n#2=IFCB();").replace("\n", end);
    StepFile file = StepText.openAll(folder, content);
    assertThat(file.lineOf(1)).isEqualTo(StepText.FIRST_LINE);
    assertThat(file.lineOf(2)).isEqualTo(StepText.FIRST_LINE + 3);
    assertThat(file.lineOf(3)).isZero();
    assertThat(file.findings()).isEmpty();
  }

  @Test
  void entityNamesMayBeLowerCase() {
    StepFile file = open("#1=ifcBeam(ifcLabel('x'),.t.);");
    assertThat(file.nameOf(1)).isEqualTo("IFCBEAM");
    assertThat(file.idsOf("IFCBEAM")).containsExactly(1);
    assertThat(file.record(1).value(0)).isEqualTo(new Value.Typed("IFCLABEL", text("x")));
    assertThat(file.record(1).value(1).asBoolean()).contains(true);
  }

  @Test
  void forwardReferencesAndOrderOfTheFile() {
    StepFile file = open("#9=IFCA(#3);#3=IFCB();#7=IFCA(#9);");
    assertThat(file.record(9).ref(0)).hasValue(3);
    assertThat(file.idsOf("IFCA")).containsExactly(9, 7);
    assertThat(file.entityNames()).containsExactly("IFCA", "IFCB");
  }

  @Test
  void missingRecordsAreEmptyNotNull() {
    StepFile file = open("#9=IFCA();");
    assertThat(file.find(1)).isEmpty();
    assertThat(file.find(-1)).isEmpty();
    assertThat(file.nameOf(1)).isEmpty();
    assertThat(file.idsOf("IFCB")).isEmpty();
    assertThat(file.idsOf("")).isEmpty();
    assertThatThrownBy(() -> file.record(1)).isInstanceOf(NoSuchElementException.class);
  }

  @Test
  void readsASecondDataSection() {
    String second = "ENDSEC;\nDATA('second',('IFC4'));\n#2=IFCB();";
    StepFile file = open("#1=IFCA();\n" + second);
    assertThat(file.count()).isEqualTo(2);
    assertThat(file.findings()).isEmpty();
  }

  @Test
  void passesOverAnchorsAndReferencesOfTheThirdEdition() {
    String content =
        StepText.file("#1=IFCA();")
            .replace(
                "DATA;", "ANCHOR;\n<a>=#1;\nENDSEC;\nREFERENCE;\n#7=<b.ifc#c>;\nENDSEC;\nDATA;");
    StepFile file = StepText.openAll(folder, content);
    assertThat(file.count()).isEqualTo(1);
  }

  // Comments

  @Test
  void aCommentIsWhiteSpaceWhereverItStands() {
    StepFile file =
        open(
            "/* it's one */#1/*a*/=/*b*/IFCA/*c*/(/* don't */1/*;*/,/*d*/(2/*)*/,3)/**/)/*e*/;"
                + "/***/ #2=IFCB(/*/ x */'/* no comment */');");
    assertThat(file.record(1).values())
        .containsExactly(new Value.Int(1), list(new Value.Int(2), new Value.Int(3)));
    assertThat(file.record(2).values()).containsExactly(text("/* no comment */"));
    assertThat(file.findings()).isEmpty();
  }

  @Test
  void aCommentedRecordDoesNotExist() {
    StepFile file = open("/*\n#1=IFCA('x);\n#2=IFCA('y');\n*/\n#3=IFCA();");
    assertThat(file.count()).isEqualTo(1);
    assertThat(file.contains(2)).isFalse();
    assertThat(file.findings()).isEmpty();
  }

  @Test
  void aSlashIsNoComment() {
    StepFile file = open("#1=IFCA('3/4*2','/');#2=IFCB('*/');");
    assertThat(file.record(1).values()).containsExactly(text("3/4*2"), text("/"));
    assertThat(file.record(2).text(0)).contains("*/");
  }

  // Values

  @Test
  void readsEachKindOfValue() {
    StepFile file = open("#1=IFCA($,*,#5,'t',.ENUM.,1,1.5,\"0A1F\",(),((1.),()),.T.,.U.);");
    assertThat(file.record(1).values())
        .containsExactly(
            new Value.Omitted(),
            new Value.Derived(),
            new Value.Ref(5),
            text("t"),
            new Value.Enum("ENUM"),
            new Value.Int(1),
            real(1.5),
            new Value.Binary("0A1F"),
            list(),
            list(list(real(1)), list()),
            new Value.Enum("T"),
            new Value.Enum("U"));
  }

  @Test
  void readsTypedValues() {
    StepFile file =
        open(
            "#1=IFCA(IFCLABEL($),IFCLABEL ( 'v' ),IFCLENGTHMEASURE(2),IFCX(IFCY(.F.)),IFCZ((1,2)));");
    StepRecord record = file.record(1);
    assertThat(record.value(0)).isEqualTo(new Value.Typed("IFCLABEL", new Value.Omitted()));
    assertThat(record.value(0).isGiven()).isFalse();
    assertThat(record.text(1)).contains("v");
    assertThat(record.value(1).typeName()).contains("IFCLABEL");
    assertThat(record.real(2)).hasValue(2.0);
    assertThat(record.value(3).asBoolean()).contains(false);
    assertThat(record.value(4).items()).hasSize(2);
    assertThat(file.findings()).isEmpty();
  }

  @Test
  void anIntegerServesAsReal() {
    StepRecord record = open("#1=IFCA(3,3.,3.5);").record(1);
    assertThat(record.real(0)).hasValue(3.0);
    assertThat(record.integer(1)).hasValue(3);
    assertThat(record.integer(2)).isEmpty();
  }

  @Test
  void aNumberThatIsNotFiniteIsAFindingAndKeepsItsPlace() {
    StepFile file = open("#1=IFCA((1.,1.#QNAN,3.),-1.#IND,7);");
    StepRecord record = file.record(1);
    assertThat(record.value(0).items()).hasSize(3);
    assertThat(record.value(0).items().get(2)).isEqualTo(real(3));
    assertThat(record.integer(2)).hasValue(7);
    assertThat(StepText.codes(file)).containsExactly("NOT_A_NUMBER", "NOT_A_NUMBER");
  }

  @Test
  void complexInstancesKeepTheirParts() {
    StepFile file = open("#1=(IFCA(1)IFCB($,'x') IFCC());#2=IFCA();");
    StepRecord record = file.record(1);
    assertThat(record.parts()).extracting(StepRecord::name).containsExactly("IFCA", "IFCB", "IFCC");
    assertThat(record.parts().get(1).text(1)).contains("x");
    assertThat(file.nameOf(1)).isEqualTo(record.name()).isEqualTo("IFCA+IFCB+IFCC");
    assertThat(file.idsOf("IFCA")).containsExactly(2);
    assertThat(StepText.codes(file)).containsExactly("COMPLEX_RECORD");
  }

  // Texts

  @Test
  void quotesAndDirectivesNeverEndATextEarly() {
    StepFile file = open("#1=IFCA('''','\\S\\'x','a'';b','\\\\',''');#2=IFCB(');\n#3=IFCC('c');");
    assertThat(file.record(1).values())
        .containsExactly(text("'"), text("\u00a7x"), text("a';b"), text("\\"), text("');#2=IFCB("));
    assertThat(file.record(3).text(0)).contains("c");
  }

  @Test
  void aBadEscapeSpoilsNothingBehindIt() {
    StepFile file = open("#1=IFCA('C:\\tmp','\\X2\\00E4','ok \\X2\\00E4\\X0\\');\n#2=IFCB('ok');");
    assertThat(file.record(1).values())
        .containsExactly(text("C:\\tmp"), text("\u00e4"), text("ok \u00e4"));
    assertThat(file.record(2).text(0)).contains("ok");
    assertThat(StepText.codes(file)).containsOnly("BAD_TEXT");
    assertThat(file.findings()).extracting(Finding::line).containsOnly(StepText.FIRST_LINE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"#1=IFCA('open,$);\n", "#1=IFCA('open,$);", "#1=IFCA('a','b,.T.);\r\n"})
  void anUnterminatedTextEndsWithItsRecord(String faulty) {
    StepFile file = open(faulty + "#2=IFCB('x',$);\n#3=IFCC('y');");
    assertThat(file.count()).isEqualTo(3);
    assertThat(file.record(2).text(0)).contains("x");
    assertThat(file.record(3).text(0)).contains("y");
    assertThat(file.findings())
        .anySatisfy(
            f -> {
              assertThat(f.code()).isEqualTo(FileFinding.UNTERMINATED_TEXT);
              assertThat(f.line()).isEqualTo(StepText.FIRST_LINE);
              assertThat(f.step()).isEqualTo(1);
            });
  }

  @Test
  void anUnterminatedTextInTheLastRecordDoesNotHideTheEnd() {
    StepFile file = open("#1=IFCA('x');\n#2=IFCB('open);");
    assertThat(file.count()).isEqualTo(2);
    assertThat(StepText.codes(file)).containsExactly("UNTERMINATED_TEXT");
  }

  @Test
  void aTextMayHoldLinesThatLookLikeRecords() {
    StepFile file = open("#1=IFCA('see\n#5=IFCWALL(1);\n#6=IFCWALL(2)',1);\n#2=IFCB('x');");
    assertThat(file.count()).isEqualTo(2);
    assertThat(file.record(1).text(0)).contains("see\n#5=IFCWALL(1);\n#6=IFCWALL(2)");
    assertThat(StepText.allFindings(file)).isEmpty();
  }

  @Test
  void readsUtf8AByteOrderMarkAndOldPages() {
    String utf8 =
        new String("Träger".getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    String windows =
        new String(
            "5\u20ac".getBytes(Charset.forName("windows-1252")), StandardCharsets.ISO_8859_1);
    String records = "#1=IFCA('" + utf8 + "','Tr\u00e4ger','" + windows + "');";
    StepFile file = StepText.openAll(folder, "\u00ef\u00bb\u00bf" + StepText.file(records));
    assertThat(file.record(1).values())
        .containsExactly(text("Träger"), text("Träger"), text("5\u20ac"));
    assertThat(StepText.codes(file)).containsExactly("FOREIGN_TEXT");
  }

  // Faults inside a record

  @Test
  void aFaultyValueKeepsItsPlaceAndItsNeighbours() {
    StepFile file = open("#1=IFCA(1,,abc def,.OPEN,#,IFCX(1,2),\"0Z\",8);\n#2=IFCB(1,2,);");
    StepRecord record = file.record(1);
    assertThat(record.size()).isEqualTo(8);
    assertThat(record.integer(0)).hasValue(1);
    assertThat(record.integer(7)).hasValue(8);
    IntStream.range(1, 7)
        .forEach(i -> assertThat(record.value(i)).isInstanceOf(Value.Faulty.class));
    assertThat(file.record(2).size()).isEqualTo(3);
    assertThat(StepText.codes(file)).containsOnly("BAD_VALUE");
  }

  @Test
  void aRecordThatIsNoneIsAFindingAndTheRestIsRead() {
    StepFile file = open("#1 IFCA(1);\n#2=;\n#=IFCA();\n#3=IFCB;\n#4=IFCC('ok');\ngarbage;\n;");
    assertThat(file.count()).isEqualTo(1);
    assertThat(file.record(4).text(0)).contains("ok");
    assertThat(file.findings())
        .extracting(f -> f.code() + " " + (f.line() - StepText.FIRST_LINE))
        .containsExactly(
            "BAD_RECORD 0",
            "BAD_RECORD 1",
            "BAD_RECORD 2",
            "BAD_RECORD 3",
            "STRAY_TEXT 5",
            "STRAY_TEXT 6");
  }

  @Test
  void aMissingSemicolonOrParenthesisEndsWithItsRecord() {
    StepFile file = open("#1=IFCA(1)\n#2=IFCB((2);\n#3=IFCC(3));\n#4=IFCD(4);");
    assertThat(file.count()).isEqualTo(4);
    assertThat(file.record(1).integer(0)).hasValue(1);
    assertThat(file.record(2).value(0).items()).hasSize(1);
    assertThat(file.record(3).integer(0)).hasValue(3);
    assertThat(StepText.codes(file))
        .containsExactly("BAD_RECORD", "MISSING_SEMICOLON", "STRAY_TEXT");
  }

  @Test
  void deepNestingIsAFaultAndNoOverflow() {
    String deep = "(".repeat(100_000) + ")".repeat(100_000);
    String types = "IFCX(".repeat(50_000) + ")".repeat(50_000);
    StepFile file =
        open("#1=IFCA(" + deep + "," + types + ",7);\n#2=IFCB(" + "(".repeat(90_000) + ";");
    assertThat(file.record(1).integer(2)).hasValue(7);
    assertThat(file.record(2).size()).isEqualTo(1);
    assertThat(StepText.codes(file)).contains("BAD_VALUE");
  }

  @Test
  void aRecordOfNothingButFaultsIsCutShort() {
    StepFile file = open("#1=IFCA(" + ",".repeat(1_000_000) + ");");
    assertThat(file.record(1).size()).isLessThan(200);
    assertThat(StepText.codes(file)).contains("BAD_RECORD");
  }

  // Ids

  @Test
  void ofADuplicateTheFirstStandsAndBothLinesAreNamed() {
    StepFile file = open("#1=IFCA('first');\n#2=IFCB();\n#1=IFCC('second');");
    assertThat(file.count()).isEqualTo(2);
    assertThat(file.record(1).text(0)).contains("first");
    assertThat(file.idsOf("IFCC")).isEmpty();
    assertThat(file.entityNames()).containsExactly("IFCA", "IFCB");
    assertThat(file.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(FileFinding.DUPLICATE_ID);
              assertThat(f.line()).isEqualTo(StepText.FIRST_LINE + 2);
              assertThat(f.sentence()).contains("line 8").contains("line 10");
            });
  }

  @Test
  void idsMayBeLargeAndFarApart() {
    StepFile file =
        open("#5000000000=IFCA(#9000000000000000000);#9000000000000000000=IFCB();#1=IFCC();");
    assertThat(file.record(5_000_000_000L).ref(0)).hasValue(9_000_000_000_000_000_000L);
    assertThat(file.nameOf(9_000_000_000_000_000_000L)).isEqualTo("IFCB");
    assertThat(file.nameOf(1)).isEqualTo("IFCC");
    assertThat(file.contains(705_032_704L)).as("5000000000 in 32 bits").isFalse();
    assertThat(file.findings()).isEmpty();
  }

  @Test
  void anIdBeyond64BitsIsAFinding() {
    StepFile file = open("#99999999999999999999=IFCA();\n#1=IFCB(#99999999999999999999,2);");
    assertThat(file.count()).isEqualTo(1);
    assertThat(file.record(1).integer(1)).hasValue(2);
    assertThat(StepText.codes(file)).containsExactly("BAD_RECORD", "BAD_VALUE");
  }

  @Test
  void manyFaultsOfOneKindAreSummedUp() {
    StringBuilder records = new StringBuilder();
    for (int i = 0; i < 5000; i++) {
      records.append("#1=IFCA(,);\n");
    }
    StepFile file = open(records.toString());
    List<Finding> all = StepText.allFindings(file);
    assertThat(all).filteredOn(f -> f.code() == FileFinding.DUPLICATE_ID).hasSize(1000);
    assertThat(all).filteredOn(f -> f.code() == FileFinding.MORE_OF_THE_SAME).hasSize(1);
  }

  // The end

  @Test
  void whatStandsBehindTheEndMarkIsLeftOut() {
    String content = StepText.file("#1=IFCA();") + "#2=IFCB();\n";
    StepFile file = StepText.openAll(folder, content + "\0\0\u001a");
    assertThat(file.count()).isEqualTo(1);
    assertThat(file.contains(2)).isFalse();
    assertThat(StepText.codes(file)).containsExactly("AFTER_END");
  }

  @Test
  void aSectionThatIsNotClosedIsAFinding() {
    StepFile file = StepText.openAll(folder, StepText.HEAD + "#1=IFCA();\nEND-ISO-10303-21;");
    assertThat(file.count()).isEqualTo(1);
    assertThat(StepText.codes(file)).containsExactly("OPEN_SECTION");
  }

  @Test
  void aFileWithoutRecordsIsAFinding() {
    StepFile file = open("");
    assertThat(file.count()).isZero();
    assertThat(file.entityNames()).isEmpty();
    assertThat(StepText.codes(file)).containsExactly("NO_RECORDS");
  }
}
