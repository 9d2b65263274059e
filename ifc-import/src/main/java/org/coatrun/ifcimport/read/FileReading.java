package org.coatrun.ifcimport.read;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Storey;

/** Reads all that one open file gives. */
final class FileReading {

  private final SourceFile file;
  private final Workers workers;

  FileReading(SourceFile file, Workers workers) {
    this.file = file;
    this.workers = workers;
  }

  FilePart read() {
    var structure = new Structure(file);
    var describer = new Describer(file, structure);
    List<Storey> storeys = structure.storeys();
    var frame = new MemberReader(file, describer, workers);
    Supplier<List<Member>> reading = workers.begin(frame::read);
    var around = new SurroundingsReader(file, describer);
    List<Member> members = membersBeside(around, reading.get());
    var part =
        new FilePart(
            buildingName(),
            storeys,
            members,
            together(around.decks(), frame.decks()),
            around.slabs(),
            around.walls(),
            around.bulks(),
            around.stairs(),
            around.spaces(),
            around.openings());
    workers.together(() -> sayOfWhole(part), () -> sayOfGuids(part));
    file.sayOfSizes();
    return part;
  }

  private static List<Deck> together(List<Deck> some, List<Deck> others) {
    return Stream.concat(some.stream(), others.stream()).toList();
  }

  /** A part or proxy that was taken for deck or slab is no member beside. */
  private static List<Member> membersBeside(SurroundingsReader around, List<Member> members) {
    Set<ElementId> taken = new HashSet<>();
    around.decks().stream().map(Deck::id).forEach(taken::add);
    around.slabs().stream().map(Slab::id).forEach(taken::add);
    // members stand in the order of their numbers
    boolean any = taken.stream().anyMatch(id -> indexOf(id, members) >= 0);
    return any ? members.stream().filter(m -> !taken.contains(m.id())).toList() : members;
  }

  private static int indexOf(ElementId id, List<Member> members) {
    int low = 0;
    int high = members.size() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      int order = members.get(middle).id().compareTo(id);
      if (order == 0) {
        return middle;
      }
      low = order < 0 ? middle + 1 : low;
      high = order < 0 ? high : middle - 1;
    }
    return -1;
  }

  private String buildingName() {
    for (long id : file.model().idsOf("IfcBuilding")) {
      String name = file.model().find(id).map(b -> b.text("Name")).orElse("");
      if (!name.isBlank()) {
        return name;
      }
    }
    return "";
  }

  private void sayOfWhole(FilePart part) {
    if (part.storeys().isEmpty()) {
      file.findings().add(ModelFinding.NO_STOREYS, 0, "", "The file has no storeys.");
    }
    if (part.members().isEmpty()
        && part.slabs().isEmpty()
        && part.walls().isEmpty()
        && part.decks().isEmpty()
        && file.model().idsOf("IfcElement").length == 0) {
      file.findings().add(ModelFinding.TYPES_ONLY, 0, "", "The file holds no building elements.");
    }
    for (Member m : part.members()) {
      if (m.classification().isSteel()
          && m.identity().storey().isEmpty()
          && !part.storeys().isEmpty()) {
        String who = m.identity().sourceClass() + " '" + m.identity().name() + "'";
        say(ModelFinding.NO_STOREY, m, who + " is in no storey.");
      }
    }
  }

  /** Twenty-two digits of base 64; the first holds two bits only. */
  private static boolean isWellFormed(String guid) {
    if (guid.length() != 22 || guid.charAt(0) < '0' || guid.charAt(0) > '3') {
      return false;
    }
    for (int i = 1; i < guid.length(); i++) {
      char c = guid.charAt(i);
      boolean letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
      if (!letter && (c < '0' || c > '9') && c != '_' && c != '$') {
        return false;
      }
    }
    return true;
  }

  private void sayOfGuids(FilePart part) {
    List<Element> all =
        Stream.<List<? extends Element>>of(
                part.members(), part.decks(), part.slabs(), part.walls(), part.spaces())
            .<Element>flatMap(List::stream)
            .toList();
    int[] hashes = new int[all.size()];
    boolean[] malformed = new boolean[all.size()];
    workers.each(
        LongStream.range(0, all.size()).toArray(),
        i -> {
          String guid = all.get((int) i).identity().guid();
          hashes[(int) i] = guid.hashCode();
          malformed[(int) i] = !isWellFormed(guid);
        });
    Set<Integer> shared = shared(hashes);
    Map<String, Long> first = new HashMap<>();
    for (int i = 0; i < hashes.length; i++) {
      if (shared.contains(hashes[i])) {
        sayIfDouble(all.get(i), first);
      }
      if (malformed[i]) {
        Element e = all.get(i);
        String sentence = "#" + e.id().step() + " has the GlobalId '" + e.identity().guid() + "'.";
        say(ModelFinding.MALFORMED_GUID, e, sentence);
      }
    }
  }

  /** Those that come more than once: the GlobalIds of all others need no closer look. */
  private static Set<Integer> shared(int[] hashes) {
    int[] sorted = hashes.clone();
    Arrays.sort(sorted);
    Set<Integer> shared = new HashSet<>();
    for (int i = 1; i < sorted.length; i++) {
      if (sorted[i] == sorted[i - 1]) {
        shared.add(sorted[i]);
      }
    }
    return shared;
  }

  private void say(ModelFinding code, Element e, String sentence) {
    file.findings().add(code, e.id().step(), e.identity().guid(), sentence);
  }

  private void sayIfDouble(Element e, Map<String, Long> first) {
    String guid = e.identity().guid();
    Long other = first.putIfAbsent(guid, e.id().step());
    // a sheet of deck is listed as member too
    if (other != null && other != e.id().step() && !guid.isEmpty()) {
      String sentence = "#" + e.id().step() + " and #" + other + " bear the same GlobalId.";
      say(ModelFinding.DOUBLE_GUID, e, sentence);
    }
  }
}
