package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.cli.console.Plain;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.model.Substance;

/** A model at a glance: what it holds, what it lacks for this job, what is wrong with it. */
public final class SurveyScreen {

  private final PrintWriter out;
  private final Building building;
  private final List<Member> steel;
  private final UnitSystem units;

  private SurveyScreen(PrintWriter out, Building building, UnitSystem units) {
    this.out = out;
    this.building = building;
    this.steel = building.members().stream().filter(m -> m.classification().isSteel()).toList();
    this.units = units;
  }

  /** Prints the survey in {@code units}. */
  public static void print(PrintWriter out, Building building, UnitSystem units) {
    var gaps = ForkJoinPool.commonPool().submit(() -> ModelGaps.of(building));
    SurveyScreen screen = new SurveyScreen(out, building, units);
    screen.files();
    screen.storeys();
    screen.members();
    screen.sections();
    screen.decks();
    screen.rest();
    screen.gaps(gaps.join());
    FindingSummary.print(out, building.findings());
    out.println();
    out.println(Cautions.SHORT);
  }

  private void files() {
    if (!building.name().isEmpty()) {
      out.println("Building: " + Plain.text(building.name()));
    }
    for (ModelFile file : building.files()) {
      String readAs =
          file.schema().equals(file.schemaUsed()) ? "" : ", read as " + file.schemaUsed();
      out.println("File:     " + Plain.text(file.name()));
      out.println("  Schema:   " + Plain.text(file.schema()) + readAs);
      out.println("  Lengths:  " + Plain.text(file.lengthUnit()));
      out.println("  Records:  " + String.format(Locale.ROOT, "%,d", file.records()));
      if (!file.application().isEmpty()) {
        out.println("  Written by: " + Plain.text(file.application()));
      }
    }
    out.println();
  }

  private void storeys() {
    Map<Optional<ElementId>, Integer> members = countOnStorey(building.members());
    Map<Optional<ElementId>, Integer> ofSteel = countOnStorey(steel);
    Map<Optional<ElementId>, Integer> decks = countOnStorey(building.decks());
    TextTable table =
        new TextTable(
            1,
            "Storey",
            "Elevation, " + units.lengthUnit(),
            "Members",
            "Steel",
            "Decks",
            "Slabs",
            "Walls",
            "Spaces");
    Map<Optional<ElementId>, Integer> slabs = countOnStorey(building.slabs());
    Map<Optional<ElementId>, Integer> walls = countOnStorey(building.walls());
    Map<Optional<ElementId>, Integer> spaces = countOnStorey(building.spaces());
    List<Optional<Storey>> rows =
        building.storeys().stream().map(Optional::of).collect(Collectors.toList());
    boolean stray =
        Stream.of(members, decks, slabs, walls, spaces)
            .anyMatch(counted -> counted.containsKey(Optional.<ElementId>empty()));
    if (stray || rows.isEmpty()) {
      rows.add(Optional.empty());
    }
    for (Optional<Storey> storey : rows) {
      Optional<ElementId> id = storey.map(Storey::id);
      table.row(
          storey.map(Storey::name).orElse("(no storey)"),
          storey.map(s -> units.showFinely(s.elevation())).orElse(""),
          Integer.toString(members.getOrDefault(id, 0)),
          Integer.toString(ofSteel.getOrDefault(id, 0)),
          Integer.toString(decks.getOrDefault(id, 0)),
          Integer.toString(slabs.getOrDefault(id, 0)),
          Integer.toString(walls.getOrDefault(id, 0)),
          Integer.toString(spaces.getOrDefault(id, 0)));
    }
    table.print(out);
    out.println();
  }

  private void members() {
    out.println("Members:  " + building.members().size());
    tally(building.members(), m -> m.classification().substance(), Substance::word)
        .forEach((word, count) -> out.printf(Locale.ROOT, "  %6d  %s%n", count, word));
    out.println();
  }

  private void sections() {
    TextTable table = new TextTable(2, "Section of steel", "Role", "Members");
    tally(steel, m -> new Kind(m.section().name(), m.role()), Kind::inOrder)
        .forEach(
            (key, count) -> {
              String[] parts = key.split("\n", -1);
              String name = parts[0].isEmpty() ? "(no section name)" : parts[0];
              table.row(name, parts[parts.length - 1], Integer.toString(count));
            });
    if (!table.isEmpty()) {
      table.print(out);
      out.println();
    }
  }

  private void decks() {
    TextTable table = new TextTable(2, "Deck", "Drawn as", "Count");
    tally(building.decks(), d -> new Kind(deckName(d), d.form()), Kind::inOrder)
        .forEach(
            (key, count) -> {
              String[] parts = key.split("\n", -1);
              table.row(parts[0], parts[parts.length - 1], Integer.toString(count));
            });
    if (!table.isEmpty()) {
      table.print(out);
      out.println();
    }
  }

  private static String deckName(Deck deck) {
    String type = deck.identity().typeName();
    return type.isEmpty() ? deck.identity().name() : type;
  }

  private void rest() {
    out.println(
        "Also: "
            + String.join(
                ", ",
                Words.count(building.slabs().size(), "slab", "slabs"),
                Words.count(building.walls().size(), "wall", "walls"),
                Words.count(building.openings().size(), "opening", "openings"),
                Words.count(building.stairs().size(), "stair or flight", "stairs and flights"),
                Words.count(building.spaces().size(), "space", "spaces"),
                Words.count(building.bulks().size(), "other solid", "other solids")));
    out.println();
  }

  private void gaps(List<String> gaps) {
    out.println(gaps.isEmpty() ? "Lacks for this job: nothing" : "Lacks for this job:");
    gaps.forEach(gap -> out.println("  - " + gap));
    out.println();
  }

  private static Map<Optional<ElementId>, Integer> countOnStorey(
      Collection<? extends Element> elements) {
    return counts(elements, e -> e.identity().storey());
  }

  /** What is counted together. */
  private record Kind(String name, Enum<?> kind) {

    /** Name and kind in words, the name first. */
    String inOrder() {
      return name + "\n" + Words.of(kind);
    }
  }

  private static <T, K> Map<String, Integer> tally(
      Collection<T> items, Function<T, K> key, Function<K, String> words) {
    Map<String, Integer> sorted = new TreeMap<>();
    counts(items, key).forEach((k, count) -> sorted.merge(words.apply(k), count, Integer::sum));
    return sorted;
  }

  /** Neighbours are mostly alike, and counted at once. */
  private static <T, K> Map<K, Integer> counts(Collection<T> items, Function<? super T, K> key) {
    Map<K, Integer> counts = new HashMap<>();
    K last = null;
    int run = 0;
    for (T item : items) {
      K next = key.apply(item);
      if (!next.equals(last)) {
        add(counts, last, run);
        last = next;
        run = 0;
      }
      run++;
    }
    add(counts, last, run);
    return counts;
  }

  private static <K> void add(Map<K, Integer> counts, K key, int more) {
    if (more > 0) {
      counts.merge(key, more, Integer::sum);
    }
  }
}
