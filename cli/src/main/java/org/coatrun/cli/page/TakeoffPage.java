package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Results;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Storey;

/** What the page shows of a takeoff and, where there is a job, of its bid. */
public final class TakeoffPage {

  private final Results results;
  private final Takeoff takeoff;
  private final List<String> storeys;
  private final List<PageColumn> columns;
  private final PageShare share;
  private final ElementRows rows;

  private TakeoffPage(Results results, PageBodies bodies, PageLimits limits) {
    this.results = results;
    takeoff = results.takeoff();
    storeys = takeoff.building().storeys().stream().map(Storey::name).toList();
    columns = TakeoffColumns.elements(storeys, BidCells.columns(results.bid().isPresent()));
    share = new PageShare(takeoff, bodies, limits);
    rows = new ElementRows(results, share, columns);
  }

  /**
   * The page as HTML in UTF-8.
   *
   * @param bodies of elements; those that the page does not list are left out
   * @param limits how much the page shows one by one
   * @param units {@code us} or {@code si}
   */
  public static byte[] html(Results results, PageBodies bodies, PageLimits limits, String units) {
    TakeoffPage page = new TakeoffPage(results, bodies, limits);
    return ReportPage.html(page.content(units, Map.of()), page.geometry());
  }

  /**
   * The same with the material line.
   *
   * @param request whose floors are drawn, in the coordinates of the bodies
   * @param choices that the page can switch between, the plan first
   */
  public static byte[] html(
      Results results,
      PageBodies bodies,
      PageLimits limits,
      String units,
      LineRequest request,
      List<LineChoice> choices) {
    TakeoffPage page = new TakeoffPage(results, bodies, limits);
    return ReportPage.html(page.content(units, LineContent.of(request, choices)), page.geometry());
  }

  /** Bodies in the order of their elements, then signs for steel without one. */
  private GeometryBlock geometry() {
    GeometryBlock block = new GeometryBlock();
    share
        .shown()
        .forEach(id -> share.body(id).ifPresent(b -> rows.of(id).ifPresent(n -> block.add(n, b))));
    Building building = takeoff.building();
    building.members().forEach(e -> mark(e, block));
    building.decks().forEach(e -> mark(e, block));
    return block;
  }

  private void mark(Element steel, GeometryBlock block) {
    rows.of(steel.id())
        .filter(n -> !share.hasBody(steel.id()))
        .ifPresent(n -> block.add(n, Markers.at(steel)));
  }

  private PageContent content(String units, Map<String, Object> line) {
    String name = takeoff.building().name();
    List<String> lacks = share.lacks();
    List<PageContent.PageProse> prose = new ArrayList<>();
    if (!lacks.isEmpty()) {
      prose.add(new PageContent.PageProse("What this page leaves out", lacks));
    }
    prose.add(new PageContent.PageProse("What the numbers mean", results.basis()));
    prose.add(new PageContent.PageProse("Cautions", results.cautions()));
    return new PageContent(
        name.isBlank() ? "Takeoff" : name,
        summary(),
        units,
        storeys,
        columns,
        rows.rows(),
        TakeoffColumns.FINDINGS,
        share.findings().stream().map(this::finding).toList(),
        line,
        prose,
        caution(),
        rows.rest(),
        lacks);
  }

  private String summary() {
    Totals members = takeoff.memberTotals();
    return String.format(
        Locale.ROOT,
        "%d members = %d counted + %d left out + %d unresolved; %s; %s",
        members.all(),
        members.counted(),
        members.leftOut(),
        members.unresolved(),
        counted(takeoff.decks().size(), "deck"),
        counted(takeoff.findings().size(), "finding"));
  }

  private static String counted(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  /** The caution of every output; what is invented is said first. */
  private String caution() {
    return Cautions.mark(results.cautions()).map(m -> m + " ").orElse("") + Cautions.SHORT;
  }

  private Map<String, Object> finding(Finding f) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("code", f.code().code());
    row.put("severity", f.code().severity().name().toLowerCase(Locale.ROOT));
    row.put("sentence", f.sentence());
    row.put("remedy", f.code().remedy());
    element(f).ifPresent(n -> row.put("element", n));
    return row;
  }

  private Optional<Integer> element(Finding f) {
    for (int i = 0; i < takeoff.building().files().size(); i++) {
      if (takeoff.building().files().get(i).name().equals(f.file())) {
        return rows.of(new ElementId(i, f.step()));
      }
    }
    return Optional.empty();
  }
}
