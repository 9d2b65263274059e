package org.coatrun.cli.damage;

import java.util.Comparator;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * A part of a model that holds every kind of record that the whole does, so that a large model can
 * be damaged often in little time: whole elements, the smallest first, as long as one adds a kind
 * that was not there; what is said of them; and one record of each kind that is left.
 */
final class ModelSlice {

  /** What uses more records than this, such as a relation or a layer, comes without them. */
  private static final int LARGE = 1000;

  private final StepRecords records;
  private final Set<Long> kept = new TreeSet<>();
  private final Set<String> kinds = new HashSet<>();
  private final Set<Long> shaped = new TreeSet<>();

  private ModelSlice(StepRecords records) {
    this.records = records;
  }

  /** The text of the part; a text without records stays as it is. */
  static String of(String text) {
    StepRecords records = new StepRecords(text);
    if (records.all().isEmpty()) {
      return text;
    }
    ModelSlice slice = new ModelSlice(records);
    slice.keepElements();
    slice.keepWhatIsSaid();
    slice.keepOneOfEachKind();
    return records.only(slice.kept);
  }

  private void keepElements() {
    for (long id : records.of("IFCPRODUCTDEFINITIONSHAPE")) {
      shaped.addAll(records.usersOf(id));
    }
    shaped.stream()
        .map(records::closure)
        .sorted(Comparator.comparingInt(Set::size))
        .forEach(this::keepIfNew);
  }

  private void keepIfNew(Set<Long> closure) {
    if (closure.stream().anyMatch(id -> !kinds.contains(records.kind(id)))) {
      keep(closure);
    }
  }

  private void keep(Set<Long> closure) {
    kept.addAll(closure);
    closure.forEach(id -> kinds.add(records.kind(id)));
  }

  /** Relations of what is kept, without what they tie besides. */
  private void keepWhatIsSaid() {
    for (long relation : records.of("IFCREL")) {
      Set<Long> single = records.singlyUsedBy(relation);
      if (tiesWhatIsKept(relation, single)) {
        keep(Set.of(relation));
        single.forEach(id -> keep(records.closure(id)));
      }
    }
  }

  /** A thing kept is in a list of the relation, or is its one; and no other element comes along. */
  private boolean tiesWhatIsKept(long relation, Set<Long> single) {
    boolean opening = records.kind(relation).equals("IFCRELVOIDSELEMENT");
    return records.usesOf(relation).stream()
            .anyMatch(id -> kept.contains(id) && (shaped.contains(id) || !single.contains(id)))
        && single.stream().allMatch(id -> opening || kept.contains(id) || !shaped.contains(id));
  }

  private void keepOneOfEachKind() {
    for (long id : records.all()) {
      if (!kinds.contains(records.kind(id))) {
        Set<Long> closure = records.closure(id);
        keep(closure.size() > LARGE ? Set.of(id) : closure);
      }
    }
  }
}
