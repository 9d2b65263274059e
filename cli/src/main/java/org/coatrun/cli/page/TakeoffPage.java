package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Results;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Storey;

/** What the page shows of a takeoff and, where there is a job, of its bid. */
public final class TakeoffPage {

  private final Results results;
  private final Takeoff takeoff;
  private final ElementRows rows;

  private TakeoffPage(Results results) {
    this.results = results;
    takeoff = results.takeoff();
    rows = new ElementRows(results);
  }

  /**
   * The page as HTML.
   *
   * @param meshes in any order; those of elements that the page does not list are left out
   * @param units {@code us} or {@code si}
   */
  public static String html(Results results, List<ElementMesh> meshes, String units) {
    TakeoffPage page = new TakeoffPage(results);
    return ReportPage.html(page.content(units, Map.of()), page.drawn(meshes));
  }

  /**
   * The same with the material line.
   *
   * @param request whose floors are drawn, in the coordinates of the meshes
   * @param choices that the page can switch between, the plan first
   */
  public static String html(
      Results results,
      List<ElementMesh> meshes,
      String units,
      LineRequest request,
      List<LineChoice> choices) {
    TakeoffPage page = new TakeoffPage(results);
    return ReportPage.html(
        page.content(units, LineContent.of(request, choices)), page.drawn(meshes));
  }

  private List<PageMesh> drawn(List<ElementMesh> meshes) {
    List<PageMesh> drawn = new ArrayList<>();
    meshes.stream()
        .sorted(Comparator.comparing(ElementMesh::id))
        .forEach(m -> rows.of(m.id()).ifPresent(n -> drawn.add(mesh(n, m))));
    Set<ElementId> seen = meshes.stream().map(ElementMesh::id).collect(Collectors.toSet());
    Stream.concat(takeoff.building().members().stream(), takeoff.building().decks().stream())
        .map(Element.class::cast)
        .filter(e -> !seen.contains(e.id()))
        .forEach(e -> drawn.add(Markers.at(rows.of(e.id()).orElseThrow(), e)));
    return drawn;
  }

  private PageContent content(String units, Map<String, Object> line) {
    List<String> storeys = takeoff.building().storeys().stream().map(Storey::name).toList();
    String name = takeoff.building().name();
    return new PageContent(
        name.isBlank() ? "Takeoff" : name,
        summary(),
        units,
        storeys,
        TakeoffColumns.elements(storeys, BidCells.columns(results.bid().isPresent())),
        rows.rows(),
        TakeoffColumns.FINDINGS,
        takeoff.findings().stream().map(this::finding).toList(),
        line,
        List.of(
            new PageContent.PageProse("What the numbers mean", results.basis()),
            new PageContent.PageProse("Cautions", results.cautions())),
        caution(),
        List.of());
  }

  private String summary() {
    Totals members = takeoff.memberTotals();
    return String.format(
        Locale.ROOT,
        "%d members = %d counted + %d left out + %d unresolved; %d decks; %d findings",
        members.all(),
        members.counted(),
        members.leftOut(),
        members.unresolved(),
        takeoff.decks().size(),
        takeoff.findings().size());
  }

  /** The caution of every output; what is invented is said first. */
  private String caution() {
    List<String> all = results.cautions();
    return all.size() > Cautions.ALL.size() ? all.get(0) + " " + Cautions.SHORT : Cautions.SHORT;
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

  private static PageMesh mesh(int number, ElementMesh mesh) {
    int[] corners = new int[3 * mesh.coated().length];
    byte[] states = new byte[mesh.coated().length];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = i;
    }
    for (int i = 0; i < states.length; i++) {
      states[i] = (byte) (mesh.coated()[i] ? 0 : 1);
    }
    return new PageMesh(number, mesh.frame(), mesh.points(), corners, states);
  }
}
