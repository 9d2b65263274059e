package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.browser.Browser;
import org.coatrun.cli.browser.BrowserPage;
import org.coatrun.cli.browser.InBrowser;
import org.coatrun.cli.report.Results;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.model.Building;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page of a building that is above the limits: the demonstration building under small ones. */
@ExtendWith(InBrowser.class)
class LargePageIT {

  private static final PageLimits LIMITS = new PageLimits(300, 30, 20_000, 2);

  @TempDir private static Path folder;
  private static Path file;
  private static Takeoff takeoff;
  private static byte[] whole;

  private BrowserPage page;

  @BeforeAll
  static void write() throws Exception {
    Path model = Path.of(System.getProperty("coatrun.root"), "test-models/harbour-office.ifc");
    Building building =
        IfcImport.read(List.of(model), ImportOptions.DEFAULT, ProgressListener.silent());
    PageBodies bodies = new PageBodies();
    SurfaceOptions options = SurfaceOptions.defaults().withMeshes(bodies);
    takeoff =
        TakeoffAssembly.assemble(
            building, SurfaceTakeoff.measure(building, options, Progress.silent()));
    Results results = Results.of(takeoff);
    file = folder.resolve("report.html");
    Files.write(file, TakeoffPage.html(results, bodies, LIMITS, "si"));
    whole = TakeoffPage.html(results, bodies, PageLimits.DEFAULT, "si");
  }

  @BeforeEach
  void open(Browser browser) {
    page = browser.page(1280, 900).open(file, "theme=light");
  }

  @AfterEach
  void closeWithoutAComplaint() {
    assertThat(page.complaints()).isEmpty();
    page.close();
  }

  @Test
  void saysWhatItLeftOut() {
    page.evaluate("document.querySelector('#lacks').open = true");
    int all = takeoff.members().size() + takeoff.decks().size();
    int around = takeoff.building().slabs().size() + takeoff.building().walls().size();
    assertThat(page.text("#lacks"))
        .contains("of its " + all + " members and decks stand here one by one")
        .contains(takeoff.memberTotals().leftOut() + " that the takeoff leaves out")
        .contains("counted ones with the least exposed area")
        .contains((around - 30) + " slabs and walls")
        .contains("drawn as plain boxes")
        .contains("Of " + takeoff.findings().size() + " findings the list has 2");
    page.click("#tab-basis");
    assertThat(page.text("#list")).startsWith("What this page leaves out");
  }

  @Test
  void aModelWithinTheLimitsLacksNothing(Browser browser, @TempDir Path other) throws Exception {
    Path small = Files.write(other.resolve("report.html"), whole);
    try (BrowserPage p = browser.page(1280, 900).open(small, "")) {
      assertThat(p.evaluate("document.querySelector('#lacks').hidden").asBoolean()).isTrue();
      assertThat(p.count("#list tfoot tr")).isEqualTo(1);
    }
    assertThat(Files.size(file)).isLessThan(Files.size(small));
  }

  @Test
  void keepsTheWholeTotals() {
    Totals members = takeoff.memberTotals();
    assertThat(total("exposed")).isCloseTo(members.exposed().squareMetres(), within(0.005));
    assertThat(total("covered")).isCloseTo(members.covered().squareMetres(), within(0.005));
    assertThat(total("weight")).isCloseTo(members.weight().kilograms(), within(0.05));
    assertThat(page.text("#list tfoot tr:nth-child(2)")).startsWith("Not listed: ");
    assertThat(page.text("#count")).contains("are not listed");
  }

  @Test
  void totalsStayWholeUnderFilters() {
    String section = "W18X35";
    page.set("#filter-section", section);
    assertThat(total("exposed"))
        .isCloseTo(takeoff.membersBySection().get(section).exposed().squareMetres(), within(0.005));
    page.set("#filter-section", "");
    page.set("#only-storey", "true");
    page.set("#storey", "4");
    assertThat(total("exposed"))
        .isCloseTo(
            takeoff.membersByStorey().get(page.text("#storey-name")).exposed().squareMetres(),
            within(0.005));
  }

  @Test
  void aSearchDoesNotPretendToKnowTheRest() {
    page.set("#search", "W18X35");
    assertThat(page.count("#list tfoot tr")).isEqualTo(1);
    assertThat(page.text("#list tfoot tr")).startsWith("Total of these rows");
  }

  @Test
  void listsThoseWithTheLargestExposedArea() {
    int listed = page.evaluate("coatrun.model.steel.length").asInt();
    assertThat(listed).isBetween(150, 300);
    double least =
        page.evaluate(
                "Math.min(...coatrun.model.steel.filter(e => e.status === 'counted').map(e =>"
                    + " e.exposed))")
            .asDouble();
    long larger =
        Stream.concat(takeoff.members().stream(), takeoff.decks().stream())
            .flatMap(l -> l.outcome().quantities().stream())
            .filter(q -> q.ledger().exposed().squareMetres() >= least - 1e-9)
            .count();
    assertThat(page.evaluate("coatrun.model.steel.filter(e => e.status === 'counted').length"))
        .asString()
        .isEqualTo(String.valueOf(larger));
    assertThat(page.evaluate("coatrun.model.steel.some(e => e.status === 'unresolved')"))
        .asString()
        .isEqualTo("true");
  }

  @Test
  void keepsWithinItsTrianglesAndDrawsWhatItLists() {
    assertThat(page.evaluate("coatrun.geometry.triangles").asInt())
        .isLessThanOrEqualTo(LIMITS.triangles() + 12 * LIMITS.elements());
    assertThat(page.evaluate("new Set(coatrun.geometry.parts.map(p => p.element)).size").asInt())
        .isGreaterThanOrEqualTo(page.evaluate("coatrun.model.steel.length").asInt());
  }

  private double total(String column) {
    int at =
        page.evaluate("coatrun.table.columns.findIndex(c => c.key === '" + column + "')").asInt();
    return Double.parseDouble(
        page.text("#list tfoot tr:last-child > :nth-child(" + (at + 1) + ")"));
  }
}
