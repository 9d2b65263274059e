package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.coatrun.cli.browser.Browser;
import org.coatrun.cli.browser.BrowserPage;
import org.coatrun.cli.browser.InBrowser;
import org.coatrun.routing.line.LinePlanner;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The line on the page: spots to switch between, plans and checks of floors. */
@ExtendWith(InBrowser.class)
class LinePageIT {

  private static final double SIDE_M = 90;

  @TempDir private static Path folder;
  private static Path page;
  private static List<LineChoice> choices;

  @BeforeAll
  static void write() throws Exception {
    LineRequest request =
        LineRequest.of(List.of(floor(0), floor(1)), work())
            .withSpots(
                List.of(
                    new MachineSpot("near", 0, new Vec2(44, 40), 0, List.of("A ramp.")),
                    new MachineSpot("corner", 0, new Vec2(2, 2), 0, List.of())),
                1);
    LinePlanner planner = LinePlanner.of(request);
    choices = LineChoice.of(planner, planner.plan());
    page = folder.resolve("report.html");
    Files.write(
        page,
        ReportPage.html(
            PageSketch.content(6, LineContent.of(request, choices)), PageSketch.geometry(6)));
  }

  @Test
  void offersThePlanFirstAndThenTheOtherSpot() {
    assertThat(choices).extracting(LineChoice::label).containsExactly("the plan: near", "corner");
  }

  @Test
  void aSpotBringsItsOwnPlanChecksAndPicture(Browser browser) {
    try (BrowserPage p = browser.page(1280, 900).open(page, "list=line&theme=light&floor=1")) {
      assertThat(p.count(".plan .missed")).isEqualTo(missed(choices.get(0).plan(), 1));
      assertThat(p.count(".plan .cell, .plan .missed")).isEqualTo(cells(choices.get(0).plan(), 1));
      assertThat(p.text("#list")).contains("Checks of Level 2", "Longest hose", "A ramp.");
      String near =
          p.evaluate("coatrun.scene.drawNow(), coatrun.scene.canvas.toDataURL()").asText();

      p.set("#line-spot", "1");
      assertThat(p.count(".plan .missed")).isEqualTo(missed(choices.get(1).plan(), 1));
      assertThat(p.evaluate("coatrun.scene.drawNow(), coatrun.scene.canvas.toDataURL()").asText())
          .isNotEqualTo(near);
      assertThat(p.text(".spots tbody tr[aria-selected='true']")).startsWith("corner");

      p.click("#link");
      assertThat(p.evaluate("location.hash").asText()).contains("spot=1").contains("floor=1");
      assertThat(p.complaints()).isEmpty();
    }
  }

  @Test
  void paperShowsEachFloorUnderItsNameAndNoLeftOversOfTheScript(Browser browser) throws Exception {
    try (BrowserPage p = browser.page(1280, 900).open(page, "theme=dark");
        PDDocument paper = Loader.loadPDF(p.printed())) {
      String text = new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("The line: the plan: near", "Level 1 R1 shaft", "Level 2 R1 shaft")
          .contains("Checks of Level 2")
          .doesNotContain("Decks by storey", "false", "undefined", "null");
      assertThat(p.evaluate("document.documentElement.dataset.theme").asText()).isEqualTo("dark");
    }
  }

  @Test
  void theShortestLineFromTheCornerFallsShort() {
    // 250 ft of hose (common practice) do not span 90 m of floor and back into the far corner.
    assertThat(missed(choices.get(1).plan(), 0) + missed(choices.get(1).plan(), 1)).isPositive();
  }

  private static int missed(LinePlan plan, int floor) {
    int missed = 0;
    for (int c = 0; c < plan.cells().size(); c++) {
      boolean here = plan.cells().get(c).floor() == floor;
      missed += here && plan.routes().get(c) instanceof NoRoute ? 1 : 0;
    }
    return missed;
  }

  private static int cells(LinePlan plan, int floor) {
    return (int) plan.cells().stream().filter(c -> c.floor() == floor).count();
  }

  private static FloorOutline floor(int f) {
    return new FloorOutline(
        "Level " + (f + 1),
        Length.ofMetres(4 * f),
        Length.ofMetres(3.8),
        List.of(Region.rectangle(0, 0, SIDE_M, SIDE_M)),
        List.of(Region.rectangle(20, 30, 60, 30.3)),
        List.of(Region.rectangle(44.8, 50, 45.2, 50.4)),
        f == 0
            ? List.of()
            : List.of(
                new SlabOpening("shaft", SlabOpening.Kind.SHAFT, Region.rectangle(46, 40, 47, 41))),
        List.of());
  }

  private static List<WorkPiece> work() {
    List<WorkPiece> work = new ArrayList<>();
    for (int f = 0; f < 2; f++) {
      for (double y = 5; y < SIDE_M; y += 16) {
        Vec3 from = new Vec3(5, y, 4 * f + 3.5);
        Vec3 to = new Vec3(SIDE_M - 5, y, 4 * f + 3.5);
        work.add(
            new WorkPiece(
                "B" + work.size(), "", from, to, Length.ofMetres(0.4), Volume.ofCubicMetres(1)));
      }
    }
    return work;
  }
}
