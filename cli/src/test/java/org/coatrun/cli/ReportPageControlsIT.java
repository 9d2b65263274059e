package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.coatrun.cli.browser.Browser;
import org.coatrun.cli.browser.BrowserPage;
import org.coatrun.cli.browser.InBrowser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What the controls beside view and list do: the page of the demonstration building. */
@ExtendWith(InBrowser.class)
class ReportPageControlsIT {

  private static final String BEAM = "G3-D4";

  /** Of all points of the window; the change of one member is more. */
  private static final double NOTICED = 0.0005;

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
  void drawsAllThatTheTakeoffKnowsABodyOf() {
    long decks =
        StreamSupport.stream(demo.takeoff().path("decks").spliterator(), false)
            .filter(d -> d.path("status").asText().equals("counted"))
            .count();
    assertThat(drawn("e.kind === 'deck' && e.status === 'counted'")).isEqualTo(decks).isPositive();
    // Eight triangles: the sign for what has no body.
    assertThat(page.evaluate("coatrun.geometry.parts.filter(p => p.to - p.from === 24).length"))
        .isEqualTo(demo.takeoff().path("totals").path("members").path("unresolved"));
    for (String kind : List.of("slab", "wall")) {
      assertThat(drawn("e.kind === '" + kind + "'"))
          .describedAs(kind)
          .isEqualTo(elements("e.kind === '" + kind + "'"))
          .isPositive();
    }
  }

  @Test
  void eachSwitchOfTheViewChangesThePicture() throws IOException {
    page.set("#surroundings", "off");
    page.until("document.documentElement.dataset.edges === 'true'");
    BufferedImage before = Views.of(page);
    Map<String, String> switches =
        Map.of("#faces", "true", "#hatch", "true", "#left-out", "false", "#surroundings", "solid");
    for (Map.Entry<String, String> s : switches.entrySet()) {
      page.set(s.getKey(), s.getValue());
      BufferedImage after = Views.of(page);
      assertThat(Views.difference(before, after)).describedAs(s.getKey()).isGreaterThan(NOTICED);
      before = after;
    }
    assertThat(page.text("#legend")).contains("covered or not coated");
  }

  @Test
  void leftOutElementsAreShownAndHidden() {
    String shown = "e.status === 'left out' && coatrun.model.visible(e)";
    int leftOut = demo.takeoff().path("totals").path("members").path("left_out").asInt();
    assertThat(elements(shown)).isEqualTo(leftOut).isPositive();
    page.set("#left-out", "false");
    assertThat(elements(shown)).isZero();
    page.set("#filter-status", "unresolved");
    assertThat(page.count("#list tbody tr"))
        .isEqualTo(demo.takeoff().path("totals").path("members").path("unresolved").asInt());
  }

  @Test
  void darkIsDarkAndLightIsLight() throws IOException {
    double light = brightness(Views.of(page));
    page.click("#theme");
    assertThat(brightness(Views.of(page))).isLessThan(0.4);
    assertThat(light).isGreaterThan(0.7);
    assertThat(page.text("#theme")).isEqualTo("Light");
  }

  @Test
  void aHeadingSortsByItsNumbers() {
    List<Double> up = new ArrayList<>(column("exposed"));
    int at = index("exposed");
    page.click("#list thead th:nth-child(" + at + ") button");
    up.sort(Comparator.naturalOrder());
    assertThat(column("exposed")).isEqualTo(up).hasSizeGreaterThan(100);
    page.click("#list thead th:nth-child(" + at + ") button");
    assertThat(column("exposed")).isEqualTo(up.stream().sorted(Comparator.reverseOrder()).toList());
    assertThat(page.evaluate("document.querySelector('[aria-sort=descending]').innerText").asText())
        .startsWith("Exposed");
  }

  @Test
  void aFilterLeavesTheTotalsOfItsGroup() {
    for (JsonNode group : demo.takeoff().path("members_by_section")) {
      if (group.path("all").asInt() < 40) {
        continue;
      }
      page.set("#filter-section", group.path("section").asText());
      assertThat(total("exposed")).isCloseTo(group.path("exposed_m2").asDouble(), within(0.005));
      assertThat(page.text("#count")).startsWith(group.path("all").asText() + " of ");
    }
    assertThat(page.text("#filter-name")).contains("1 set");
    page.click("#clear");
    assertThat(total("exposed"))
        .isCloseTo(
            demo.takeoff().path("totals").path("members").path("exposed_m2").asDouble(),
            within(0.005));
  }

  @Test
  void searchFindsByMarkSectionAndGlobalId() {
    JsonNode beam = demo.member(BEAM);
    for (String key : List.of("mark", "section", "guid")) {
      page.set("#search", beam.path(key).asText());
      assertThat(page.text("#list tbody")).describedAs(key).contains(BEAM);
      assertThat(page.evaluate("coatrun.table.rows.length < coatrun.table.all.length").asBoolean())
          .isTrue();
    }
    page.set("#search", "no such mark");
    assertThat(page.count("#list tbody tr")).isZero();
  }

  @Test
  void copiesWhatItSaves(@TempDir Path folder) throws IOException {
    page.set("#search", "W21X44");
    page.saved(folder, () -> page.click("#csv"));
    page.evaluate(
        "navigator.clipboard.writeText = (t) => { window.handed = t; return Promise.resolve(); }");
    page.click("#copy");
    page.until("document.querySelector('#count').innerText === 'copied'");
    List<String> copied = page.evaluate("window.handed").asText().lines().toList();
    List<List<String>> saved =
        TakeoffResult.csv(folder.resolve("members.csv")).stream()
            .map(row -> List.copyOf(row.values()))
            .toList();
    assertThat(copied.stream().skip(1).map(line -> List.of(line.split("\t", -1))).toList())
        .isEqualTo(saved)
        .hasSizeGreaterThan(5);
  }

  @Test
  void isolatingLeavesTheChosenAndWhatCoversIt() throws IOException {
    page.set("#search", demo.member(BEAM).path("guid").asText());
    page.click("#list tbody td");
    page.set("#search", "");
    BufferedImage before = Views.of(page);
    page.click("#isolate");
    assertThat(elements("coatrun.model.visible(e)"))
        .isEqualTo(
            1 + page.evaluate("new Set(coatrun.model.last.covers.map(c => c.by)).size").asInt());
    assertThat(Views.difference(before, Views.of(page))).isGreaterThan(0.01);
  }

  @Test
  void whatIsCutAwayCannotBeChosen() {
    page.set("#surroundings", "off");
    page.set("#search", demo.member(BEAM).path("guid").asText());
    String pick =
        "(() => { const n = coatrun.model.elements.findIndex(e => e.mark === '"
            + BEAM
            + "'); return coatrun.scene.pick(...coatrun.scene.onScreen(n)) === n; })()";
    assertThat(page.evaluate(pick).asBoolean()).isTrue();
    page.set("#cut-axis", "z");
    page.set("#cut", "100");
    assertThat(page.evaluate(pick).asBoolean()).isFalse();
  }

  @Test
  void cautionsAreOneClickAwayFromEveryList() {
    List<String> cautions = new ArrayList<>();
    demo.takeoff().path("cautions").forEach(c -> cautions.add(c.asText()));
    for (String tab : List.of("members", "decks", "findings")) {
      page.click("#tab-" + tab);
      page.click("#basis-jump");
      assertThat(page.text("#list")).contains(cautions).contains("What the numbers mean");
    }
    assertThat(page.text("#caution")).contains("planning aid");
  }

  private int elements(String condition) {
    return page.evaluate("coatrun.model.elements.filter(e => " + condition + ").length").asInt();
  }

  private int drawn(String condition) {
    return page.evaluate(
            "[...new Set(coatrun.geometry.parts.map(p => p.element))].filter(n => { const e ="
                + " coatrun.model.elements[n]; return "
                + condition
                + "; }).length")
        .asInt();
  }

  /** Place of a column in the list, from 1. */
  private int index(String column) {
    return 1
        + page.evaluate("coatrun.table.columns.findIndex(c => c.key === '" + column + "')").asInt();
  }

  /** The numbers of a column on the page of the list that is shown, where there are any. */
  private List<Double> column(String column) {
    List<Double> numbers = new ArrayList<>();
    page.evaluate("coatrun.table.rows.map(r => r." + column + ").filter(v => v !== undefined)")
        .forEach(v -> numbers.add(v.asDouble()));
    return numbers;
  }

  private double total(String column) {
    return Double.parseDouble(
        page.text("#list tfoot tr:nth-child(1) > :nth-child(" + index(column) + ")"));
  }

  /** Mean of all points, 0 for black and 1 for white. */
  private static double brightness(BufferedImage picture) {
    double sum = 0;
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        int rgb = picture.getRGB(x, y);
        sum += (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
      }
    }
    return sum / (3 * 255.0 * picture.getWidth() * picture.getHeight());
  }
}
