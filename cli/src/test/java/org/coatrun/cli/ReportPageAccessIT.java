package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.coatrun.cli.browser.Browser;
import org.coatrun.cli.browser.BrowserPage;
import org.coatrun.cli.browser.InBrowser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page without a mouse, without sight, on paper, and with text that means it ill. */
@ExtendWith(InBrowser.class)
class ReportPageAccessIT {

  private static final Set<String> CONTROLS =
      Set.of("button", "checkbox", "combobox", "searchbox", "slider", "tab", "image", "tabpanel");

  private static final String BEAM = "G3-D4";

  @Test
  void theKeyboardReachesTheTableAndChooses(Browser browser) throws Exception {
    try (BrowserPage page = browser.page(1280, 900).open(DemoReport.demo().page(), "")) {
      page.evaluate("document.querySelector('#csv').focus()");
      int steps = 0;
      while (!page.evaluate("document.activeElement.matches('#list tbody tr')").asBoolean()) {
        page.press("Tab");
        assertThat(++steps).isLessThan(80);
      }
      page.press("Tab");
      String mark = page.evaluate("document.activeElement.cells[0].textContent").asText();
      page.press("Enter");

      assertThat(page.text("#detail h2")).contains(mark);
      page.evaluate("document.querySelector('[role=tab][aria-selected=true]').focus()");
      page.press("ArrowRight");
      assertThat(page.text("[role=tab][aria-selected=true]")).startsWith("Decks");
    }
  }

  @Test
  void theViewMovesByKeys(Browser browser) throws Exception {
    try (BrowserPage page = browser.page(1280, 900).open(DemoReport.demo().page(), "")) {
      page.evaluate("document.querySelector('#view').focus()");
      page.press("Home");
      String whole = page.evaluate("coatrun.scene.viewpoint").asText();
      String before = whole;
      for (String key : List.of("ArrowLeft", "ArrowUp", "+")) {
        page.press(key);
        String after = page.evaluate("coatrun.scene.viewpoint").asText();
        assertThat(after).describedAs(key).isNotEqualTo(before);
        before = after;
      }
      page.press("Home");
      assertThat(page.evaluate("coatrun.scene.viewpoint").asText()).isEqualTo(whole);
    }
  }

  @Test
  void aTabletNeedsNoScrollingSideways(Browser browser) throws Exception {
    try (BrowserPage page = browser.page(820, 1180).open(DemoReport.demo().page(), "")) {
      assertThat(page.evaluate("document.documentElement.scrollWidth").asInt())
          .isLessThanOrEqualTo(820);
    }
  }

  @Test
  void aTapChoosesTheMemberThatItMeant(Browser browser) throws Exception {
    try (BrowserPage page = tablet(browser)) {
      onlyItsStorey(page);
      double[] at = middleOf(page, BEAM);
      String view = page.evaluate("coatrun.scene.viewpoint").asText();
      page.tap(at[0], at[1], 5, -4);
      assertThat(page.text("#detail h2")).startsWith(BEAM);
      assertThat(page.evaluate("coatrun.scene.viewpoint").asText()).isEqualTo(view);
      assertThat(page.complaints()).isEmpty();
    }
  }

  @Test
  void aFingerNeedNotHitAThinMemberExactly(Browser browser) throws Exception {
    try (BrowserPage page = tablet(browser)) {
      page.set("#surroundings", "off");
      page.set("#search", DemoReport.demo().member(BEAM).path("guid").asText());
      double[] at = middleOf(page, BEAM);
      page.tap(at[0], at[1] - 60, 0, 0);
      assertThat(page.text("#detail h2")).isEqualTo("Nothing chosen");
      assertThat(page.evaluate("coatrun.scene.pick(" + at[0] + "," + (at[1] - 10) + ")").asInt())
          .isEqualTo(-1);
      page.tap(at[0], at[1] - 10, 0, 0);
      assertThat(page.text("#detail h2")).startsWith(BEAM);
    }
  }

  @Test
  void aFingerThatMovesTurnsTheModelAndChoosesNothing(Browser browser) throws Exception {
    try (BrowserPage page = tablet(browser)) {
      double[] at = middleOf(page, BEAM);
      String view = page.evaluate("coatrun.scene.viewpoint").asText();
      page.tap(at[0], at[1], 60, 10);
      assertThat(page.evaluate("coatrun.scene.viewpoint").asText()).isNotEqualTo(view);
      assertThat(page.text("#detail h2")).isEqualTo("Nothing chosen");
    }
  }

  private static BrowserPage tablet(Browser browser) throws Exception {
    return browser.page(820, 1180).touched().open(DemoReport.demo().page(), "theme=light");
  }

  /** The beam's, so that no steel stands before it; deck and walls do, and are seen through. */
  private static void onlyItsStorey(BrowserPage page) {
    page.set("#only-storey", "true");
    page.set("#storey", "4");
  }

  private static double[] middleOf(BrowserPage page, String mark) {
    JsonNode at =
        page.evaluate(
            "(() => { document.querySelector('#view').scrollIntoView({block: 'center'}); return"
                + " coatrun.scene.onScreen(coatrun.model.elements.findIndex(e => e.mark === '"
                + mark
                + "')); })()");
    return new double[] {at.path(0).asDouble(), at.path(1).asDouble()};
  }

  @Test
  void unitsSwitchNumbersAndHeadings(Browser browser) throws Exception {
    try (BrowserPage page = browser.page(1280, 900).open(DemoReport.demo().page(), "")) {
      double squareMetres =
          DemoReport.demo().takeoff().path("totals").path("members").path("exposed_m2").asDouble();
      page.set("#units", "us");
      assertThat(page.text("#list thead")).contains("Exposed, ft²").doesNotContain("m²");
      assertThat(page.text("#list tfoot"))
          .contains("%.1f".formatted(squareMetres / (0.3048 * 0.3048)));
      page.set("#units", "si");
      assertThat(page.text("#list thead")).contains("Exposed, m²");
      assertThat(page.text("#list tfoot")).contains("%.2f".formatted(squareMetres));
    }
  }

  @Test
  void everyControlHasAName(Browser browser) throws Exception {
    try (BrowserPage page = browser.page(1280, 900).open(DemoReport.demo().page(), "")) {
      List<String> nameless = new ArrayList<>();
      int controls = 0;
      for (JsonNode node : page.accessibility()) {
        if (CONTROLS.contains(node.path("role").path("value").asText())
            && !node.path("ignored").asBoolean()) {
          controls++;
          if (node.path("name").path("value").asText().isBlank()) {
            nameless.add(node.toString());
          }
        }
      }
      assertThat(controls).isGreaterThan(20);
      assertThat(nameless).isEmpty();
    }
  }

  @Test
  void paperCarriesTheTotalsAndTheCautions(Browser browser) throws Exception {
    try (BrowserPage page = browser.page(1280, 900).open(DemoReport.demo().page(), "");
        PDDocument paper = Loader.loadPDF(page.printed())) {
      JsonNode members = DemoReport.demo().takeoff().path("totals").path("members");
      String text = new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
      assertThat(text)
          .contains(DemoReport.demo().takeoff().path("building").asText())
          .contains("%.2f".formatted(members.path("exposed_m2").asDouble()))
          .contains("planning aid", "Level 2 (", "Members by storey", "Members by role", "Findings")
          .doesNotContain("Copy link");
    }
  }

  @Test
  void aNameThatIsAScriptIsText(Browser browser, @TempDir Path folder) throws Exception {
    String script = "<script>document.title = 'run'</script>";
    String model = Files.readString(Program.FIRST_TRY, StandardCharsets.ISO_8859_1);
    String beam =
        model
            .lines()
            .filter(l -> l.contains("=IFCBEAM(") || l.contains("= IFCBEAM("))
            .findFirst()
            .orElseThrow();
    Path hostile = folder.resolve("hostile.ifc");
    Files.writeString(hostile, model.replace(beam, renamed(beam, script)));

    try (BrowserPage page =
        browser.page(1280, 900).open(DemoReport.of(hostile, folder.resolve("out")).page(), "")) {
      page.set("#search", "<script>");
      page.click("#list tbody td");
      assertThat(page.text("#detail h2")).contains(script);
      assertThat(page.text("#list tbody tr")).contains(script);
      assertThat(page.evaluate("document.title").asText()).isNotEqualTo("run");
      assertThat(page.complaints()).isEmpty();
    }
  }

  /** Name is the third attribute, behind GlobalId and OwnerHistory (IFC4, IfcRoot). */
  private static String renamed(String record, String name) {
    return record.replaceFirst(
        "(\\('[^']*',[^,]*,)('[^']*'|\\$)", "$1'" + name.replace("'", "''") + "'");
  }

  @Test
  void aRequestThatLeavesAPageIsNoticed(Browser browser, @TempDir Path folder) throws IOException {
    Path leak = folder.resolve("leak.html");
    Files.writeString(
        leak,
        "<!doctype html><html data-ready='true'><title>leak</title>"
            + "<img src='http://elsewhere.invalid/x.png'></html>");
    try (BrowserPage page = browser.page(400, 300).open(leak, "")) {
      page.until("document.images[0].complete");
      assertThat(page.requests()).contains("http://elsewhere.invalid/x.png");
    }
  }
}
