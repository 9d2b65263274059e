package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.coatrun.cli.browser.Browser;
import org.coatrun.cli.browser.BrowserPage;
import org.coatrun.cli.browser.InBrowser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The page that a plan with a job writes: hours, thickness, material and the line. */
@ExtendWith(InBrowser.class)
class PlanPageIT {

  private static final String GIRDER = "G3-D4";

  private static final double BOARD_FOOT_M3 = 0.3048 * 0.3048 * 0.0254;

  /** What the job adds for clips and other small things on the steel. */
  private static final double ATTACHMENTS = 1.02;

  private DemoReport plan;
  private BrowserPage page;

  @BeforeEach
  void open(Browser browser) throws Exception {
    plan = DemoReport.plan();
    page = browser.page(1280, 900).open(plan.page(), "theme=light&units=us");
  }

  @AfterEach
  void closeWithoutAComplaint() {
    plan.requireQuiet(page);
    page.close();
  }

  @Test
  void theCardShowsTheRuleTheThicknessAndTheMaterial() {
    JsonNode girder = plan.member(GIRDER);
    page.set("#search", girder.path("guid").asText());
    page.click("#list tbody td");
    double boardFeet =
        ATTACHMENTS
            * girder.path("exposed_m2").asDouble()
            * (girder.path("thickness_mm").asDouble() / 1000)
            / BOARD_FOOT_M3;
    assertThat(page.text("#detail"))
        .contains(girder.path("hours_reason").asText())
        .contains(girder.path("thickness_reason").asText())
        .contains(girder.path("listing").asText())
        .contains(girder.path("frame_reason").asText())
        .contains(girder.path("working_floor").asText())
        .containsPattern("Hours\\s+2 h")
        .containsPattern("Thickness\\s+1 1/8 in")
        .containsPattern("In place\\s+%.1f bf".formatted(boardFeet))
        .contains("Bags, exact", "Reached by", "Line, the plan: loading bay")
        .doesNotContain("null");
  }

  @Test
  void materialOfAllElementsIsThatOfTheJob() throws IOException {
    Map<String, String> job = row("material.csv", "by", "job");
    assertThat(sum("inPlace")).isCloseTo(number(job, "in_place_m3"), within(1e-6));
    assertThat(sum("bags")).isCloseTo(number(job, "bags"), within(1e-3));
  }

  @Test
  void hoursAndThicknessColourTheView() throws IOException {
    BufferedImage before = Views.of(page);
    for (String colouring : List.of("hours", "thickness")) {
      page.set("#colour", colouring);
      BufferedImage after = Views.of(page);
      assertThat(Views.difference(before, after)).describedAs(colouring).isGreaterThan(0.01);
      before = after;
    }
    assertThat(page.text("#legend")).contains("Thickness", "1 in to 1 1/4 in");
  }

  @Test
  void aRowOfTheLegendFiltersByItsHours() {
    page.set("#colour", "hours");
    page.evaluate(
        "[...document.querySelectorAll('#legend button')].find(b =>"
            + " b.textContent.includes('2 h')).click()");
    int two = 0;
    for (JsonNode member : plan.takeoff().path("members")) {
      two += member.path("hours").asDouble() == 2 ? 1 : 0;
    }
    page.until("coatrun.table.rows.length < coatrun.table.all.length");
    assertThat(page.text("#count")).startsWith(two + " of ");
    assertThat(two).isGreaterThan(10);
  }

  @Test
  void eachComparedSpotBringsItsOwnLine() throws IOException {
    List<Map<String, String>> spots = csv("spots.csv");
    page.click("#tab-line");
    assertThat(page.count("#line-spot option")).isEqualTo(spots.size()).isEqualTo(5);
    Set<String> pictures = new HashSet<>();
    for (int i = 0; i < spots.size(); i++) {
      page.set("#line-spot", String.valueOf(i));
      String chosen = page.text(".spots tbody tr[aria-selected='true']");
      Map<String, String> spot =
          spots.stream().filter(s -> chosen.contains(s.get("spot"))).findFirst().orElseThrow();
      assertThat(chosen)
          .contains("%.2f".formatted(number(spot, "longest_flexible_m") / 0.3048))
          .contains("%.0f".formatted(number(spot, "cost")));
      assertThat(page.text("#list")).contains(spot.get("needs").split("; "));
      pictures.add(
          page.evaluate("coatrun.scene.drawNow(), coatrun.scene.canvas.toDataURL()").asText());
    }
    assertThat(pictures).hasSameSizeAs(spots);
  }

  @Test
  void aFloorsPlanAndChecksAreThoseOfTheFiles() throws IOException {
    Map<String, String> floor = row("floors.csv", "floor", "Level 4");
    page.click("#tab-line");
    page.evaluate(
        "(() => { const s = document.querySelector('#line-floor'); s.value ="
            + " [...s.options].find(o => o.text === 'Level 4').value; s.dispatchEvent(new"
            + " Event('change')); })()");
    assertThat(page.text("#list"))
        .contains("Checks of Level 4")
        .contains("%.2f ft".formatted(number(floor, "rise_m") / 0.3048))
        .contains("%.1f psi".formatted(number(floor, "pump_pressure_psi")))
        .contains("needed")
        .contains("36.0 ft");
    assertThat(page.count(".line .plan .cell, .line .plan .missed"))
        .isEqualTo((int) number(floor, "places"));
    assertThat(page.count(".line .plan .HOSE")).isPositive();
    assertThat(page.count(".line .plan .riser")).isPositive();
  }

  @Test
  void theLineCanBeHiddenInTheView() throws IOException {
    BufferedImage with = Views.of(page);
    page.set("#line-shown", "false");
    assertThat(Views.difference(with, Views.of(page))).isGreaterThan(0.0005);
  }

  /** In the view, on the plan of the floor and in the legend; until something else is chosen. */
  @Test
  void theLineToWhatIsChosenStandsOut() throws IOException {
    JsonNode girder = plan.member(GIRDER);
    BufferedImage plain = Views.of(page);
    page.set("#search", girder.path("guid").asText());
    page.click("#list tbody td");
    page.click("#tab-line");
    assertThat(
            page.evaluate("document.querySelector('#line-floor').selectedOptions[0].text").asText())
        .isEqualTo(girder.path("working_floor").asText());
    String mark = girder.path("mark").asText();
    int places =
        (int)
            StreamSupport.stream(page.evaluate("coatrun.line.chosen.cells").spliterator(), false)
                .filter(
                    c ->
                        StreamSupport.stream(c.path("all").spliterator(), false)
                            .anyMatch(m -> m.asText().equals(mark)))
                .count();
    assertThat(places).isPositive();
    assertThat(page.count(".line .plan .cell.own")).isEqualTo(places);
    assertThat(page.count(".line .plan .HOSE.own")).isPositive();
    assertThat(page.text("#legend")).contains("line to what is chosen");
    assertThat(Views.difference(plain, Views.of(page))).isGreaterThan(0.0005);
    page.evaluate("coatrun.model.choose(null)");
    assertThat(page.count(".line .plan .own")).isZero();
    assertThat(page.text("#legend")).doesNotContain("line to what is chosen");
  }

  @Test
  void eachPartOfTheLineHasAColourAndAShapeOfItsOwn() {
    for (String theme : List.of("light", "dark")) {
      page.evaluate("coatrun.setTheme('" + theme + "')");
      JsonNode marks =
          page.evaluate(
              "[...document.querySelectorAll('#legend li')].filter(l => ['machine', 'hose', 'pipe',"
                  + " 'whip, up to the steel', 'place of work', 'not reached']"
                  + ".includes(l.textContent)).map(l => { const p = l.querySelector('path');"
                  + " return [p.getAttribute('stroke'), p.getAttribute('d') +"
                  + " p.getAttribute('stroke-width')]; })");
      Set<String> colours = new HashSet<>();
      Set<String> shapes = new HashSet<>();
      marks.forEach(m -> colours.add(m.path(0).asText()));
      marks.forEach(m -> shapes.add(m.path(1).asText()));
      assertThat(marks).hasSize(6);
      assertThat(colours).hasSize(6);
      assertThat(shapes).hasSize(6);
    }
  }

  @Test
  void theLineFollowsTheStoreysThatAreShown() {
    String bodies =
        "coatrun.scene.line.children.reduce((n, b) => n + (b.isInstancedMesh ? b.count : 1), 0)";
    int all = page.evaluate(bodies).asInt();
    assertThat(page.text("#legend")).contains("machine", "hose", "pipe", "place of work");
    page.set("#only-storey", "true");
    page.set("#storey", "3");
    long places =
        StreamSupport.stream(page.evaluate("coatrun.line.chosen.cells").spliterator(), false)
            .filter(c -> c.path("floor").asInt() == 2)
            .count();
    assertThat(page.evaluate(bodies).asInt()).isLessThan(all / 2).isGreaterThan((int) places);
    page.set("#line-shown", "false");
    assertThat(page.evaluate(bodies).asInt()).isZero();
    assertThat(page.text("#legend")).doesNotContain("hose");
  }

  private double sum(String column) {
    return page.evaluate("coatrun.model.steel.reduce((s, e) => s + (e." + column + " || 0), 0)")
        .asDouble();
  }

  private Map<String, String> row(String file, String column, String value) throws IOException {
    return csv(file).stream().filter(r -> r.get(column).equals(value)).findFirst().orElseThrow();
  }

  private List<Map<String, String>> csv(String file) throws IOException {
    Path folder = plan.page().getParent();
    return TakeoffResult.csv(folder.resolve(file));
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
