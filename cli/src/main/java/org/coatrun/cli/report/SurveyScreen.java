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
  private final UnitSystem units;
  private final Runs<Optional<ElementId>> storeys = new Runs<>();
  private final Runs<Optional<ElementId>> storeysOfSteel = new Runs<>();
  private final Runs<Substance> substances = new Runs<>();
  private final Runs<Kind> sections = new Runs<>();

  private SurveyScreen(PrintWriter out, Building building, UnitSystem units) {
    this.out = out;
    this.building = building;
    this.units = units;
    building.members().forEach(this::count);
  }

  /** All counts at once: of a large building, members take longer to reach than to count. */
  private void count(Member member) {
    Optional<ElementId> storey = member.identity().storey();
    storeys.add(storey);
    substances.add(member.classification().substance());
    if (member.classification().isSteel()) {
      storeysOfSteel.add(storey);
      sections.add(new Kind(member.section().name(), member.role()));
    }
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
    Map<Optional<ElementId>, Integer> members = storeys.counts();
    Map<Optional<ElementId>, Integer> ofSteel = storeysOfSteel.counts();
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
    inOrder(substances, Substance::word)
        .forEach((word, count) -> out.printf(Locale.ROOT, "  %6d  %s%n", count, word));
    out.println();
  }

  private void sections() {
    TextTable table = new TextTable(2, "Section of steel", "Role", "Members");
    inOrder(sections, Kind::inOrder)
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
    Runs<Kind> kinds = new Runs<>();
    building.decks().forEach(d -> kinds.add(new Kind(deckName(d), d.form())));
    inOrder(kinds, Kind::inOrder)
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
    Runs<Optional<ElementId>> storeys = new Runs<>();
    elements.forEach(e -> storeys.add(e.identity().storey()));
    return storeys.counts();
  }

  /** What is counted together. */
  private record Kind(String name, Enum<?> kind) {

    // Written out: see the conventions in DEVELOPERS.md.

    @Override
    public boolean equals(Object other) {
      return other instanceof Kind o && kind == o.kind && name.equals(o.name);
    }

    @Override
    public int hashCode() {
      return 31 * name.hashCode() + kind.hashCode();
    }

    /** Name and kind in words, the name first. */
    String inOrder() {
      return name + "\n" + Words.of(kind);
    }
  }

  private static <K> Map<String, Integer> inOrder(Runs<K> counted, Function<K, String> words) {
    Map<String, Integer> sorted = new TreeMap<>();
    counted.counts().forEach((k, count) -> sorted.merge(words.apply(k), count, Integer::sum));
    return sorted;
  }

  /** Counts what is alike; neighbours mostly are, and are counted at once. */
  private static final class Runs<K> {

    private final Map<K, Integer> counts = new HashMap<>();
    private K last;
    private int run;

    void add(K next) {
      if (!next.equals(last)) {
        end();
        last = next;
      }
      run++;
    }

    Map<K, Integer> counts() {
      end();
      return counts;
    }

    private void end() {
      if (run > 0) {
        counts.merge(last, run, Integer::sum);
        run = 0;
      }
    }
  }
}
