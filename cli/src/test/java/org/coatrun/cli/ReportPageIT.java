package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.coatrun.cli.browser.Browser;
import org.coatrun.cli.browser.BrowserPage;
import org.coatrun.cli.browser.InBrowser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page of the demonstration building, in a browser. */
@ExtendWith(InBrowser.class)
class ReportPageIT {

  private static final String BEAM = "G3-D4";

  private DemoReport demo;
  private BrowserPage page;

  @BeforeEach
  void open(Browser browser) throws Exception {
    demo = DemoReport.demo();
    page = browser.page(1280, 900).open(demo.page(), "theme=light");
  }

  @AfterEach
  void closeWithoutAComplaint() {
    demo.requireQuiet(page);
    page.close();
  }

  @Test
  void drawsEveryMemberThatIsCounted() {
    Set<String> drawn = new TreeSet<>();
    page.evaluate(
            "[...new Set(coatrun.geometry.parts.map(p =>"
                + " coatrun.model.elements[p.element]))].filter(e => e.kind === 'member' &&"
                + " e.status === 'counted').map(e => String(e.step))")
        .forEach(step -> drawn.add(step.asText()));
    Set<String> counted = new TreeSet<>();
    for (JsonNode member : demo.takeoff().path("members")) {
      if (member.path("status").asText().equals("counted")) {
        counted.add(member.path("step").asText());
      }
    }
    assertThat(drawn).isEqualTo(counted).hasSizeGreaterThan(100);
  }

  @Test
  void hasTheTotalsOfTheTakeoff() {
    JsonNode totals = demo.takeoff().path("totals").path("members");
    assertThat(total("exposed")).isCloseTo(totals.path("exposed_m2").asDouble(), within(0.005));
    assertThat(total("covered")).isCloseTo(totals.path("covered_m2").asDouble(), within(0.005));
    assertThat(total("length")).isCloseTo(totals.path("length_m").asDouble(), within(0.0005));
    assertThat(total("weight")).isCloseTo(totals.path("weight_kg").asDouble(), within(0.05));
    assertThat(page.text("#count")).startsWith(totals.path("all").asText() + " of ");
  }

  @Test
  void showsTheNumbersOfAMemberThatIsClicked() {
    JsonNode beam = demo.member(BEAM);
    search(beam.path("guid").asText());
    page.set("#surroundings", "off");
    clickOn(beam);

    page.until("document.querySelector('#detail h2').innerText.startsWith('" + BEAM + "')");
    assertThat(page.text("#detail"))
        .contains(beam.path("section").asText())
        .contains(beam.path("storey").asText())
        .contains(beam.path("guid").asText())
        .contains("%.2f m²".formatted(beam.path("exposed_m2").asDouble()))
        .contains("%.3f m".formatted(beam.path("length_m").asDouble()))
        .contains("%.1f 1/m".formatted(beam.path("section_factor_per_m").asDouble()))
        .contains("Covered by")
        .doesNotContain("another element")
        .doesNotContain("null");
    assertThat(page.text("tr[aria-selected='true']")).contains(BEAM);
  }

  @Test
  void whatIsSeenThroughGivesWayToTheMemberBehindIt() {
    page.set("#only-storey", "true");
    page.set("#storey", "4");
    page.set("#surroundings", "solid");
    clickOn(demo.member(BEAM));
    assertThat(page.evaluate("coatrun.model.last.kind").asText()).isEqualTo("wall");
    page.evaluate("coatrun.model.choose(null)");
    page.set("#surroundings", "through");
    clickOn(demo.member(BEAM));
    assertThat(page.text("#detail h2")).startsWith(BEAM);
  }

  @Test
  void eachColouringAndTheStoreySliderChangeThePicture() throws IOException {
    BufferedImage before = Views.of(page);
    for (String colouring : new String[] {"role", "frame", "exposed", "factor", "status"}) {
      page.set("#colour", colouring);
      BufferedImage after = Views.of(page);
      assertThat(Views.difference(before, after)).describedAs(colouring).isGreaterThan(0.01);
      before = after;
    }
    page.set("#storey", "2");
    assertThat(Views.difference(before, Views.of(page))).isGreaterThan(0.01);
  }

  @Test
  void totalsFollowTheSearchAndTheStorey() {
    double all = total("exposed");
    search("W18X35");
    double girders = 0;
    for (JsonNode member : demo.takeoff().path("members")) {
      if (member.path("section").asText().equals("W18X35")) {
        girders += member.path("exposed_m2").asDouble();
      }
    }
    // Connections of such a girder carry its section in their name too.
    assertThat(total("exposed")).isGreaterThanOrEqualTo(girders - 0.005).isLessThan(all / 2);

    search("");
    page.set("#only-storey", "true");
    page.set("#storey", "4");
    assertThat(total("exposed"))
        .isCloseTo(storey(page.text("#storey-name")).path("exposed_m2").asDouble(), within(0.005));
  }

  @Test
  void savesTheTableThatItShows(@TempDir Path folder) throws IOException {
    search("W18X35");
    String saved = page.saved(folder, () -> page.click("#csv"));
    StringBuilder shown = new StringBuilder();
    page.evaluate(
            "[...document.querySelectorAll('#list tr')].map(r => "
                + "[...r.cells].map(c => c.textContent.replace(/ [▾▴]$/, '')))")
        .forEach(
            row -> {
              StringBuilder line = new StringBuilder();
              row.forEach(cell -> line.append(line.isEmpty() ? "" : ",").append(quoted(cell)));
              shown.append(line).append("\r\n");
            });
    assertThat(saved.lines().count()).isGreaterThan(10);
    assertThat(shown.toString()).startsWith(saved);
    assertThat(page.count("#list tbody tr") + 1).isEqualTo((int) saved.lines().count());
  }

  @Test
  void sumsOfSeveralChosenOnesStandUnderTheTotal() {
    List<String> marks = List.of("G3-D4", "G5-D2", "B5-B1-2");
    double exposed = 0;
    page.click("#several");
    for (String mark : marks) {
      exposed += demo.member(mark).path("exposed_m2").asDouble();
      search(demo.member(mark).path("guid").asText());
      page.evaluate("document.querySelector('#list tbody tr').click()");
    }
    search("");
    assertThat(page.text("#list tfoot tr:last-child")).contains("Chosen: 3");
    assertThat(total("exposed", 2)).isCloseTo(exposed, within(0.005));
    page.click("#isolate");
    assertThat(
            page.evaluate(
                    "coatrun.model.elements.filter(e => e.kind === 'member' &&"
                        + " coatrun.model.visible(e)).length")
                .asInt())
        .isBetween(3, 60);
  }

  @Test
  void aFindingLeadsToItsElement() {
    page.click("#tab-findings");
    assertThat(page.count("#list tbody tr")).isEqualTo(demo.takeoff().path("findings").size());
    int named =
        page.evaluate("coatrun.data.findings.findIndex(f => f.element !== undefined)").asInt();
    page.set("#search", "");
    page.click("#list tbody tr:nth-child(" + (named + 1) + ") td");
    assertThat(page.evaluate("coatrun.model.last.n"))
        .isEqualTo(page.evaluate("coatrun.data.findings[" + named + "].element"));
    assertThat(page.text("#detail")).contains("Findings");
  }

  @Test
  void theCutTakesAPartOfTheModelAway() throws IOException {
    BufferedImage whole = Views.of(page);
    page.set("#cut-axis", "z");
    page.set("#cut", "300");
    assertThat(Views.difference(whole, Views.of(page))).isGreaterThan(0.01);
  }

  @Test
  void aLinkBringsBackWhatWasChosen(Browser browser) throws Exception {
    JsonNode beam = demo.member(BEAM);
    search(beam.path("guid").asText());
    page.click("#list tbody td");
    page.set("#colour", "role");
    page.click("#link");
    String link = page.evaluate("location.hash").asText().substring(1);

    try (BrowserPage other = browser.page(1280, 900).open(demo.page(), link)) {
      assertThat(other.text("#detail h2")).startsWith(BEAM);
      assertThat(other.evaluate("document.querySelector('#colour').value").asText())
          .isEqualTo("role");
      assertThat(other.evaluate("coatrun.scene.viewpoint"))
          .isEqualTo(page.evaluate("coatrun.scene.viewpoint"));
    }
  }

  private static String quoted(JsonNode cell) {
    String text = cell.asText();
    return text.matches("(?s).*[\",\r\n].*") ? '"' + text.replace("\"", "\"\"") + '"' : text;
  }

  private JsonNode storey(String name) {
    for (JsonNode storey : demo.takeoff().path("members_by_storey")) {
      if (storey.path("storey").asText().equals(name)) {
        return storey;
      }
    }
    throw new IllegalStateException("no storey " + name);
  }

  private void search(String text) {
    page.set("#search", text);
  }

  private void clickOn(JsonNode member) {
    JsonNode at =
        page.evaluate(
            "(() => { document.querySelector('#view').scrollIntoView({block: 'center'}); const n ="
                + " coatrun.model.elements.findIndex(e => e.step === "
                + member.path("step").asInt()
                + "); return coatrun.scene.onScreen(n); })()");
    page.clickAt(at.path(0).asDouble(), at.path(1).asDouble());
  }

  private double total(String column) {
    return total(column, 1);
  }

  private double total(String column, int line) {
    int at =
        page.evaluate("coatrun.table.columns.findIndex(c => c.key === '" + column + "')").asInt();
    return Double.parseDouble(
        page.text("#list tfoot tr:nth-child(" + line + ") > :nth-child(" + (at + 1) + ")"));
  }
}
