package org.coatrun.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineRequest;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

class DrawingFilesTest {

  private static final String HOSTILE = "<script>alert('x')</script> & \"\u0001\uFFFF\" яхта 工場";

  @TempDir static Path folder;
  private static DrawingJob job;
  private static List<String> names;

  @BeforeAll
  static void write() throws CommandFailure {
    job = SampleLines.job(HOSTILE, UnitSystem.US, renamed(SampleLines.office(2)));
    names = write(folder.resolve("once"));
  }

  @Test
  void namesSortAsTheFloorsDoAndHoldPlainLettersOnly() {
    assertThat(names)
        .containsExactly(
            "plan-01-script-level-1-script.svg",
            "plan-02-script-level-2-script.svg",
            "section.svg",
            "drawings.pdf");
  }

  @Test
  void svgHasNoScriptAndAsksForNothingElse() throws Exception {
    for (String name : names.subList(0, 3)) {
      String text = Files.readString(folder.resolve("once").resolve(name));
      Document document = parsed(folder.resolve("once").resolve(name));
      assertThat(document.getElementsByTagName("script").getLength()).isZero();
      assertThat(document.getElementsByTagName("image").getLength()).isZero();
      assertThat(document.getElementsByTagName("foreignObject").getLength()).isZero();
      assertThat(text).doesNotContain("url(").doesNotContain("@import").doesNotContain("href");
      NodeList all = document.getElementsByTagName("*");
      for (int i = 0; i < all.getLength(); i++) {
        for (int a = 0; a < all.item(i).getAttributes().getLength(); a++) {
          Node attribute = all.item(i).getAttributes().item(a);
          assertThat(attribute.getNodeName()).doesNotStartWith("on");
        }
      }
    }
  }

  @Test
  void svgShowsNamesAsTheyStand() throws Exception {
    Document document = parsed(folder.resolve("once").resolve(names.get(0)));
    assertThat(texts(document))
        .contains("Line plan, <script>Level 1</script>")
        .anyMatch(t -> t.startsWith("<script>alert('x')</script> & \"") && t.contains("яхта 工場"));
    Element root = document.getDocumentElement();
    assertThat(root.getAttribute("width")).isEqualTo("431.8mm");
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 431.8 279.4");
  }

  @Test
  void pdfHasAPageForEachSheetAndItsWords() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("once/drawings.pdf").toFile())) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(3);
      var stripper = new PDFTextStripper();
      for (int page = 1; page <= 3; page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String words = stripper.getText(pdf).replaceAll("\\s+", " ");
        Cautions.ALL.forEach(c -> assertThat(words).contains(c));
        assertThat(words)
            .contains("яхта ??")
            .contains("Sheet " + page + " of 3")
            .contains(page < 3 ? "Line plan, <script>Level " + page : "Section through");
      }
      assertThat(pdf.getPage(0).getMediaBox().getWidth() / 72).isCloseTo(17, within());
      assertThat(pdf.getPage(0).getMediaBox().getHeight() / 72).isCloseTo(11, within());
    }
  }

  /** The typeface has no Chinese: storeys go by number, and the sheet says so. */
  @Test
  void storeysInOtherLettersGoByNumberInThePdfAndByNameInTheSvg() throws Exception {
    LineRequest r = SampleLines.office(2);
    LineRequest chinese = renamed(r, f -> f.storey().replace("Level ", "楼层"));
    Path to = folder.resolve("chinese");
    try (OutputFolder out = OutputFolder.open(to)) {
      Drawings.write(out, SampleLines.job("工場", UnitSystem.SI, chinese));
      out.publish();
    }
    assertThat(texts(parsed(to.resolve("plan-02-2.svg")))).contains("Line plan, 楼层2");
    try (PDDocument pdf = Loader.loadPDF(to.resolve("drawings.pdf").toFile())) {
      for (int page = 1; page <= 2; page++) {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        assertThat(stripper.getText(pdf).replaceAll("\\s+", " "))
            .contains("Line plan, storey " + page)
            .contains("The SVG sheets have every name.");
      }
    }
  }

  @Test
  void theSameJobGivesTheSameBytes() throws Exception {
    write(folder.resolve("twice"));
    assertThat(bytes(folder.resolve("twice"))).isEqualTo(bytes(folder.resolve("once")));
  }

  private static Offset<Float> within() {
    return Offset.offset(0.001f);
  }

  private static List<String> write(Path to) throws CommandFailure {
    try (OutputFolder out = OutputFolder.open(to)) {
      List<String> written = Drawings.write(out, job);
      out.publish();
      return written;
    }
  }

  private static Map<String, String> bytes(Path of) throws IOException {
    var all = new TreeMap<String, String>();
    try (var files = Files.list(of)) {
      for (Path file : files.toList()) {
        all.put(file.getFileName().toString(), HexFormat.of().formatHex(Files.readAllBytes(file)));
      }
    }
    return all;
  }

  private static Document parsed(Path file) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(file.toFile());
  }

  private static List<String> texts(Document document) {
    NodeList all = document.getElementsByTagName("text");
    var texts = new ArrayList<String>();
    for (int i = 0; i < all.getLength(); i++) {
      texts.add(all.item(i).getTextContent());
    }
    return texts;
  }

  private static LineRequest renamed(LineRequest r) {
    return renamed(r, f -> "<script>" + f.storey() + "</script>");
  }

  private static LineRequest renamed(LineRequest r, Function<FloorOutline, String> name) {
    List<FloorOutline> floors =
        r.floors().stream()
            .map(
                f ->
                    new FloorOutline(
                        name.apply(f),
                        f.elevation(),
                        f.height(),
                        f.plate(),
                        f.walls(),
                        f.columns(),
                        f.openings(),
                        f.spaces()))
            .toList();
    return LineRequest.of(floors, r.work());
  }
}
