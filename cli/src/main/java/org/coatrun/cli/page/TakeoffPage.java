package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Words;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.estimate.Weight;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.SectionMeasure;

/** What the page shows of a takeoff. */
public final class TakeoffPage {

  private final Takeoff takeoff;
  private final Map<ElementId, Integer> numbers = new HashMap<>();
  private final List<Map<String, Object>> elements = new ArrayList<>();

  private TakeoffPage(Takeoff takeoff) {
    this.takeoff = takeoff;
    takeoff.members().forEach(l -> number(l.identity().id()));
    takeoff.decks().forEach(l -> number(l.identity().id()));
    takeoff.members().forEach(l -> elements.add(member(l)));
    takeoff.decks().forEach(l -> elements.add(line(l, "deck")));
    takeoff.building().slabs().forEach(e -> add(e, "slab"));
    takeoff.building().walls().forEach(e -> add(e, "wall"));
  }

  /**
   * The page as HTML.
   *
   * @param meshes in any order; those of elements that the page does not list are left out
   * @param units {@code us} or {@code si}
   * @param basis what the numbers mean, a line each
   */
  public static String html(
      Takeoff takeoff, List<ElementMesh> meshes, String units, List<String> basis) {
    TakeoffPage page = new TakeoffPage(takeoff);
    List<PageMesh> drawn = new ArrayList<>();
    meshes.stream()
        .filter(m -> page.numbers.containsKey(m.id()))
        .sorted(Comparator.comparing(ElementMesh::id))
        .forEach(m -> drawn.add(page.mesh(m)));
    Set<ElementId> seen = meshes.stream().map(ElementMesh::id).collect(Collectors.toSet());
    page.steel()
        .filter(e -> !seen.contains(e.id()))
        .forEach(e -> drawn.add(Markers.at(page.numbers.get(e.id()), e)));
    return ReportPage.html(page.content(units, basis), drawn);
  }

  private Stream<Element> steel() {
    return Stream.concat(
        takeoff.building().members().stream(), takeoff.building().decks().stream());
  }

  private PageContent content(String units, List<String> basis) {
    Totals members = takeoff.memberTotals();
    String name = takeoff.building().name();
    List<String> storeys = takeoff.building().storeys().stream().map(Storey::name).toList();
    return new PageContent(
        name.isBlank() ? "Takeoff" : name,
        String.format(
            "%d members = %d counted + %d left out + %d unresolved; %d decks; %d findings",
            members.all(),
            members.counted(),
            members.leftOut(),
            members.unresolved(),
            takeoff.decks().size(),
            takeoff.findings().size()),
        units,
        storeys,
        TakeoffColumns.elements(storeys),
        elements,
        TakeoffColumns.FINDINGS,
        takeoff.findings().stream().map(this::finding).toList(),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new PageContent.PageProse("What the numbers mean", basis),
            new PageContent.PageProse("Cautions", Cautions.ALL)),
        Cautions.SHORT,
        List.of());
  }

  private void number(ElementId id) {
    numbers.put(id, numbers.size());
  }

  private void add(Element element, String kind) {
    if (!numbers.containsKey(element.id())) {
      number(element.id());
      elements.add(identity(element.identity(), kind, storeyOf(element.identity())));
    }
  }

  private Optional<Storey> storeyOf(Identity identity) {
    return identity
        .storey()
        .flatMap(
            id -> takeoff.building().storeys().stream().filter(s -> s.id().equals(id)).findFirst());
  }

  private Map<String, Object> identity(Identity identity, String kind, Optional<Storey> storey) {
    Map<String, Object> e = new LinkedHashMap<>();
    e.put("kind", kind);
    storey.ifPresent(s -> e.put("level", takeoff.building().storeys().indexOf(s)));
    e.put("storey", storey.map(Storey::name).orElse(""));
    e.put("guid", identity.guid());
    e.put("step", identity.id().step());
    e.put("class", identity.sourceClass());
    e.put("name", identity.name());
    e.put("mark", identity.mark());
    return e;
  }

  private Map<String, Object> line(Line line, String kind) {
    Map<String, Object> e = identity(line.identity(), kind, line.storey());
    e.put("status", line.outcome().status().word());
    e.put("reason", line.outcome().reason());
    line.outcome().quantities().ifPresent(q -> measured(e, q));
    return e;
  }

  private Map<String, Object> member(MemberLine line) {
    Map<String, Object> e = line(line, "member");
    e.put("role", Words.of(line.member().role()));
    e.put("section", line.member().section().name());
    line.frame()
        .ifPresent(
            f -> {
              e.put("frame", f.frameClass().word());
              e.put("frameReason", f.reason());
            });
    return e;
  }

  private void measured(Map<String, Object> e, Quantities q) {
    e.put("length", q.length().metres());
    q.weight().map(Weight::mass).ifPresent(m -> e.put("weight", m.kilograms()));
    e.put("body", q.ledger().body().squareMetres());
    e.put("inside", q.ledger().inside().squareMetres());
    e.put("ends", q.ledger().ends().squareMetres());
    e.put("holes", q.ledger().holes().squareMetres());
    e.put("covered", q.ledger().covered().squareMetres());
    e.put("exposed", q.ledger().exposed().squareMetres());
    q.section().map(SectionMeasure::heated).ifPresent(h -> e.put("heated", h.metres()));
    q.sectionFactor().ifPresent(f -> e.put("factor", f.perMetre()));
    q.weightOverPerimeter().ifPresent(w -> e.put("wd", w));
    e.put("covers", q.covers().stream().map(this::cover).toList());
  }

  private Map<String, Object> cover(Cover cover) {
    Map<String, Object> c = new LinkedHashMap<>();
    c.put("by", numbers.getOrDefault(cover.by(), -1));
    c.put("area", cover.area().squareMetres());
    c.put("how", cover.kind() == Cover.Kind.CONTACT ? "in contact" : "encased");
    return c;
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
        return Optional.ofNullable(numbers.get(new ElementId(i, f.step())));
      }
    }
    return Optional.empty();
  }

  private PageMesh mesh(ElementMesh mesh) {
    int[] corners = new int[3 * mesh.coated().length];
    byte[] states = new byte[mesh.coated().length];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = i;
    }
    for (int i = 0; i < states.length; i++) {
      states[i] = (byte) (mesh.coated()[i] ? 0 : 1);
    }
    return new PageMesh(numbers.get(mesh.id()), mesh.frame(), mesh.points(), corners, states);
  }
}
