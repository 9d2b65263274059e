package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.coatrun.cli.report.Results;
import org.coatrun.cli.report.Words;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Weight;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.model.Wall;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.SectionMeasure;

/**
 * The elements of a page, numbered: members, decks, slabs, walls, each with what is known of it.
 */
final class ElementRows {

  private final BidCells bid;
  private final Map<ElementId, Integer> numbers = new HashMap<>();
  private final Map<ElementId, Integer> levels = new HashMap<>();
  private final Map<ElementId, Storey> storeys = new HashMap<>();
  private final List<Supplier<Map<String, Object>>> rows = new ArrayList<>();
  private final RestRows rest;

  /**
   * @param share what has a row of its own; the other members and decks are summed
   * @param columns by which they are summed
   */
  ElementRows(Results results, PageShare share, List<PageColumn> columns) {
    Takeoff takeoff = results.takeoff();
    Building building = takeoff.building();
    bid = new BidCells(results);
    rest = new RestRows(columns);
    for (Storey storey : building.storeys()) {
      levels.put(storey.id(), levels.size());
      storeys.put(storey.id(), storey);
    }
    takeoff.members().forEach(l -> number(l.identity().id(), share));
    takeoff.decks().forEach(l -> number(l.identity().id(), share));
    List<Slab> slabs = building.slabs().stream().filter(e -> number(e.id(), share)).toList();
    List<Wall> walls = building.walls().stream().filter(e -> number(e.id(), share)).toList();
    takeoff.members().forEach(l -> add(l, () -> member(l)));
    takeoff.decks().forEach(l -> add(l, () -> line(l, "deck")));
    slabs.forEach(e -> rows.add(() -> around(e, "slab")));
    walls.forEach(e -> rows.add(() -> around(e, "wall")));
  }

  /** A row for each element, in the order of their numbers; each is made when its turn comes. */
  Iterable<Map<String, Object>> rows() {
    return () -> rows.stream().map(Supplier::get).iterator();
  }

  /** Sums of the members and decks without a row. */
  List<Map<String, Object>> rest() {
    return rest.groups();
  }

  /** The number of an element, where the page lists it. */
  Optional<Integer> of(ElementId id) {
    return Optional.ofNullable(numbers.get(id));
  }

  /** Gives the next number to what is shown; what is a member and a slab at once has one. */
  private boolean number(ElementId id, PageShare share) {
    return share.shows(id) && numbers.putIfAbsent(id, numbers.size()) == null;
  }

  /** Of what has no row of its own nothing is told but what is summed. */
  private void add(Line line, Supplier<Map<String, Object>> summed) {
    if (numbers.containsKey(line.identity().id())) {
      rows.add(() -> whole(line, summed.get()));
    } else {
      rest.add(summed.get());
    }
  }

  private Map<String, Object> whole(Line line, Map<String, Object> row) {
    identify(row, line.identity());
    row.put("reason", line.outcome().reason());
    line.outcome().quantities().ifPresent(q -> faces(row, q));
    return row;
  }

  private Map<String, Object> around(Element element, String kind) {
    Identity identity = element.identity();
    Map<String, Object> e = row(kind, identity.storey().map(storeys::get));
    identify(e, identity);
    return e;
  }

  private Map<String, Object> row(String kind, Optional<Storey> storey) {
    Map<String, Object> e = new LinkedHashMap<>();
    e.put("kind", kind);
    storey.ifPresent(s -> e.put("level", levels.get(s.id())));
    e.put("storey", storey.map(Storey::name).orElse(""));
    return e;
  }

  private static void identify(Map<String, Object> e, Identity identity) {
    e.put("guid", identity.guid());
    e.put("step", identity.id().step());
    e.put("class", identity.sourceClass());
    e.put("name", identity.name());
    e.put("mark", identity.mark());
  }

  private Map<String, Object> line(Line line, String kind) {
    Map<String, Object> e = row(kind, line.storey());
    e.put("status", line.outcome().status().word());
    line.outcome().quantities().ifPresent(q -> measured(e, q));
    bid.put(line.identity().id(), e);
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

  private static void measured(Map<String, Object> e, Quantities q) {
    e.put("length", q.length().metres());
    q.weight().map(Weight::mass).ifPresent(m -> e.put("weight", m.kilograms()));
    e.put("covered", q.ledger().covered().squareMetres());
    e.put("exposed", q.ledger().exposed().squareMetres());
  }

  private void faces(Map<String, Object> e, Quantities q) {
    e.put("body", q.ledger().body().squareMetres());
    e.put("inside", q.ledger().inside().squareMetres());
    e.put("ends", q.ledger().ends().squareMetres());
    e.put("holes", q.ledger().holes().squareMetres());
    q.section().map(SectionMeasure::heated).ifPresent(h -> e.put("heated", h.metres()));
    q.sectionFactor().ifPresent(f -> e.put("factor", f.perMetre()));
    q.weightOverPerimeter().ifPresent(w -> e.put("wd", w));
    e.put("covers", covers(q.covers()));
  }

  /**
   * Of each the number of what covers, or -1, the area, and whether it encases rather than touches.
   */
  private double[] covers(List<Cover> covers) {
    double[] all = new double[3 * covers.size()];
    for (int i = 0; i < covers.size(); i++) {
      Cover cover = covers.get(i);
      all[3 * i] = numbers.getOrDefault(cover.by(), -1);
      all[3 * i + 1] = cover.area().squareMetres();
      all[3 * i + 2] = cover.kind() == Cover.Kind.ENCASED ? 1 : 0;
    }
    return all;
  }
}
