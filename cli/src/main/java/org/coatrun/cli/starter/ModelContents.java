package org.coatrun.cli.starter;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.cli.report.Words;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.yaml.RecordStarter;

/** What a model holds that a job file can name, as lines of text; names stand in quotes. */
final class ModelContents {

  private static final int LONGEST_LIST = 300;
  private static final int LONGEST_NAME = 500;

  private final Building building;
  private final UnitSystem units;
  private final List<Member> steel;
  private final Map<ElementId, String> storeyNames = new HashMap<>();

  ModelContents(Building building, UnitSystem units) {
    this.building = building;
    this.units = units;
    steel = building.members().stream().filter(m -> m.classification().isSteel()).toList();
    building.storeys().forEach(s -> storeyNames.put(s.id(), s.name()));
  }

  /** Files, storeys, sections, decks and spaces. */
  List<String> summary() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Made for "
            + building.files().stream()
                .map(ModelFile::name)
                .map(RecordStarter::text)
                .collect(Collectors.joining(", "))
            + ", which holds");
    list(lines, "Storeys", building.storeys().stream().map(this::storey).toList());
    list(lines, "Sections of steel", tally(steel, this::section));
    list(lines, "Decks", tally(building.decks(), ModelContents::deck));
    list(lines, "Spaces", building.spaces().stream().map(this::space).sorted().toList());
    return lines;
  }

  /** Rules for storeys, sections, spaces and decks, ready but for their hours. */
  List<String> rules() {
    List<String> lines = new ArrayList<>();
    lines.add("Ready for this model, but for the hours:");
    named(building.storeys().stream().map(Storey::name))
        .forEach(name -> lines.add(rule("storey", name)));
    named(steel.stream().map(m -> m.section().name()).sorted())
        .forEach(name -> lines.add(rule("section", name)));
    named(building.spaces().stream().map(s -> s.identity().name()).sorted())
        .forEach(name -> lines.add(rule("space", name)));
    List<String> decks = named(building.decks().stream().map(d -> d.identity().name()).sorted());
    if (!decks.isEmpty()) {
      lines.add("Decks that are sprayed although deck.spray says no:");
      decks.forEach(name -> lines.add("  - {name: " + RecordStarter.text(name) + ", coat: yes}"));
    }
    return lines.size() == 1 ? List.of() : lines;
  }

  /** The storeys as the order of the programme. */
  List<String> order() {
    List<String> names =
        building.storeys().stream().map(Storey::name).filter(n -> !n.isBlank()).distinct().toList();
    return names.isEmpty()
        ? List.of()
        : List.of(
            names.stream()
                .map(RecordStarter::text)
                .collect(Collectors.joining(", ", "order: [", "]")));
  }

  private String storey(Storey storey) {
    return name(storey.name())
        + " at "
        + units.showFinely(storey.elevation())
        + " "
        + units.lengthUnit()
        + ": "
        + Words.count(on(steel, Member::identity, storey), "steel element", "steel elements")
        + ", "
        + Words.count(on(building.decks(), Deck::identity, storey), "deck", "decks");
  }

  private static <T> long on(List<T> items, Function<T, Identity> identity, Storey storey) {
    return items.stream()
        .filter(i -> identity.apply(i).storey().filter(storey.id()::equals).isPresent())
        .count();
  }

  private String section(Member member) {
    return name(member.section().name()) + ", " + Words.of(member.role());
  }

  private static String deck(Deck deck) {
    String type = deck.identity().typeName();
    return name(type.isEmpty() ? deck.identity().name() : type)
        + ", drawn as "
        + Words.of(deck.form());
  }

  private String space(Space space) {
    boolean told = space.longName().isBlank() || space.longName().equals(space.identity().name());
    String longName = told ? "" : ", " + name(space.longName());
    String storey =
        space.identity().storey().map(storeyNames::get).map(s -> ", on " + name(s)).orElse("");
    return name(space.identity().name()) + longName + storey;
  }

  private static String name(String name) {
    return name.isBlank() ? "(no name)" : RecordStarter.text(name);
  }

  private static String rule(String selector, String name) {
    return "  - {" + selector + ": " + RecordStarter.text(name) + ", hours: 2 h}";
  }

  /** Names that a key can hold, each once, as many as a list may have. */
  private static List<String> named(Stream<String> names) {
    return names
        .filter(n -> !n.isBlank() && n.length() <= LONGEST_NAME)
        .distinct()
        .limit(LONGEST_LIST)
        .toList();
  }

  private static <T> List<String> tally(List<T> items, Function<T, String> key) {
    Map<String, Long> counts =
        items.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.counting()));
    return counts.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()).toList();
  }

  private static void list(List<String> lines, String title, List<String> items) {
    lines.add(title + (items.isEmpty() ? ": none" : ":"));
    items.stream().limit(LONGEST_LIST).forEach(item -> lines.add("  " + item));
    if (items.size() > LONGEST_LIST) {
      lines.add("  and " + (items.size() - LONGEST_LIST) + " more");
    }
  }
}
