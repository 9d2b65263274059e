package org.coatrun.cli.damage;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The records of a model as text, who refers to whom, and ways to damage one of them. */
final class StepRecords {

  private static final Pattern RECORD =
      Pattern.compile("(?m)^#(\\d+)\\s*=\\s*(\\w+)\\s*\\((.*?)\\)\\s*;[ \\t]*$", Pattern.DOTALL);
  private static final Pattern REFERENCE = Pattern.compile("#(\\d+)");
  private static final Pattern LIST = Pattern.compile("\\((\\s*#\\d+\\s*(?:,\\s*#\\d+\\s*)*+)\\)");
  private static final Pattern QUOTED = Pattern.compile("'[^']*'");
  private static final Pattern NUMBER = Pattern.compile("(?<=[(,])-?\\d+\\.\\d*(?:E[+-]?\\d+)?");

  /** Ways to damage a record, none of which moves what stands behind it. */
  enum Way {
    LOST,
    OTHER_ENTITY,
    EMPTIED,
    REFERS_TO_ITSELF,
    HUGE_NUMBERS,
    NO_NUMBERS,
    NOT_CLOSED
  }

  private record Place(int start, int end, String kind, String arguments) {}

  private final String text;
  private final Map<Long, Place> places = new TreeMap<>();
  private final Map<Long, Set<Long>> uses = new HashMap<>();
  private final Map<Long, Set<Long>> usedBy = new HashMap<>();

  StepRecords(String text) {
    this.text = text;
    for (MatchResult m : (Iterable<MatchResult>) RECORD.matcher(text).results()::iterator) {
      long id = Long.parseLong(m.group(1));
      places.put(id, new Place(m.start(), m.end(), m.group(2), m.group(3)));
      Matcher refers = REFERENCE.matcher(QUOTED.matcher(m.group(3)).replaceAll("''"));
      while (refers.find()) {
        long to = Long.parseLong(refers.group(1));
        uses.computeIfAbsent(id, k -> new HashSet<>()).add(to);
        usedBy.computeIfAbsent(to, k -> new HashSet<>()).add(id);
      }
    }
  }

  String kind(long id) {
    return places.get(id).kind();
  }

  /** Numbers of all records of an entity whose name begins so. */
  List<Long> of(String kind) {
    return places.keySet().stream().filter(id -> kind(id).startsWith(kind)).toList();
  }

  /** A record as it stands in the file. */
  String text(long id) {
    return text.substring(places.get(id).start(), places.get(id).end());
  }

  Set<Long> all() {
    return places.keySet();
  }

  Set<Long> usesOf(long id) {
    return uses.getOrDefault(id, Set.of());
  }

  Set<Long> usersOf(long id) {
    return usedBy.getOrDefault(id, Set.of());
  }

  /** What a record names by itself, not in a list. */
  Set<Long> singlyUsedBy(long id) {
    Set<Long> single = new TreeSet<>();
    Matcher refers = REFERENCE.matcher(LIST.matcher(places.get(id).arguments()).replaceAll("()"));
    while (refers.find()) {
      single.add(Long.parseLong(refers.group(1)));
    }
    single.retainAll(places.keySet());
    return single;
  }

  /** A record with all that it refers to, near and far. */
  Set<Long> closure(long id) {
    Set<Long> all = new TreeSet<>();
    add(id, all);
    return all;
  }

  /** The text with some of its records only; what is left out is missing from lists, too. */
  String only(Set<Long> kept) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (var place : inOrder()) {
      Place p = place.getValue();
      out.append(text, at, p.start());
      if (kept.contains(place.getKey())) {
        out.append(
            LIST.matcher(text.substring(p.start(), p.end())).replaceAll(m -> thinned(m, kept)));
      }
      at = p.end();
    }
    return out.append(text, at, text.length()).toString().replaceAll("\\R\\R+", "\n");
  }

  private List<Map.Entry<Long, Place>> inOrder() {
    return places.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> e.getValue().start()))
        .toList();
  }

  private static String thinned(MatchResult list, Set<Long> kept) {
    return Stream.of(list.group(1).split(","))
        .map(String::strip)
        .filter(reference -> kept.contains(Long.parseLong(reference.substring(1))))
        .collect(Collectors.joining(",", "(", ")"));
  }

  /**
   * What no other element has a part in: the element, what it is made of, and what is said of it
   * alone.
   */
  Set<Long> ownedBy(long element) {
    Set<Long> owned = new TreeSet<>();
    add(element, owned);
    for (long said : usedBy.getOrDefault(element, Set.of())) {
      add(said, owned);
    }
    while (owned.removeIf(id -> id != element && isShared(id, owned))) {
      // Whatever a shared record uses is shared, too.
    }
    return owned;
  }

  private void add(long id, Set<Long> owned) {
    if (places.containsKey(id) && owned.add(id)) {
      uses.getOrDefault(id, Set.of()).forEach(next -> add(next, owned));
    }
  }

  /** A relation is the element's own where all that it ties is, but for the storey. */
  private boolean isShared(long id, Set<Long> owned) {
    return kind(id).startsWith("IFCREL")
        ? !uses.getOrDefault(id, Set.of()).stream().allMatch(u -> owned.contains(u) || isStorey(u))
        : !owned.containsAll(usedBy.getOrDefault(id, Set.of()));
  }

  private boolean isStorey(long id) {
    return places.containsKey(id) && kind(id).equals("IFCBUILDINGSTOREY");
  }

  /** The text with one record damaged; each other stays on its line. */
  String damaged(long id, Way way) {
    Place p = places.get(id);
    String lines = "\n".repeat((int) text.substring(p.start, p.end).lines().count() - 1);
    return text.substring(0, p.start) + damaged(id, p, way) + lines + text.substring(p.end);
  }

  private static String damaged(long id, Place p, Way way) {
    String arguments = p.arguments.replaceAll("\\R", " ");
    String head = "#" + id + "=" + p.kind + "(";
    return switch (way) {
      case LOST -> "";
      case OTHER_ENTITY -> "#" + id + "=IFCNOSUCHTHING(" + arguments + ");";
      case EMPTIED -> head + ");";
      case REFERS_TO_ITSELF -> head + REFERENCE.matcher(arguments).replaceAll("#" + id) + ");";
      case HUGE_NUMBERS -> head + NUMBER.matcher(arguments).replaceAll("1.E300") + ");";
      case NO_NUMBERS -> head + NUMBER.matcher(arguments).replaceAll("'?'") + ");";
      case NOT_CLOSED -> head + arguments + ";";
    };
  }
}
