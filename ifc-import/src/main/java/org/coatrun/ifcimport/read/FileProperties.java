package org.coatrun.ifcimport.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;
import org.coatrun.ifcimport.entity.UnitReader;
import org.coatrun.ifcimport.entity.Units;
import org.coatrun.ifcimport.part21.Value;
import org.coatrun.ifcimport.schema.EntityType;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.model.Properties;

/** Properties and quantities of one element, its own before its type's; read when asked for. */
final class FileProperties implements Properties {

  private static final double SAME = 1e-6;
  private static final int MOST_NESTED = 5;

  private record Quantity(String name, double value) {}

  private final SourceFile file;
  private final long element;
  private final long[] ofType;

  /**
   * @param ofType the sets of the element's type
   */
  FileProperties(SourceFile file, long element, long[] ofType) {
    this.file = file;
    this.element = element;
    this.ofType = ofType;
  }

  private LongStream sets() {
    return LongStream.concat(
        LongStream.of(file.relations().propertiesOf.all(element)), LongStream.of(ofType));
  }

  @Override
  public Optional<String> text(String name) {
    return Optional.ofNullable(texts(List.of(name)).get(name));
  }

  /** Each set is decoded once for all names, and none once all are found. */
  @Override
  public Map<String, String> texts(List<String> names) {
    List<String> borne = borne(names);
    if (borne.isEmpty()) {
      return Map.of();
    }
    Map<String, String> found = new HashMap<>();
    textsIn(file.relations().propertiesOf.all(element), borne, found);
    textsIn(ofType, borne, found);
    return found;
  }

  /** Those of some names that any property of the file bears. */
  private List<String> borne(List<String> names) {
    List<String> borne = new ArrayList<>();
    for (String name : names) {
      if (file.propertyNames().has(name)) {
        borne.add(name);
      }
    }
    return borne;
  }

  private void textsIn(long[] sets, List<String> names, Map<String, String> found) {
    for (int i = 0; i < sets.length && found.size() < names.size(); i++) {
      if (file.model().isA(sets[i], "IfcPropertySet")) {
        textsIn(sets[i], names, found);
      }
    }
  }

  private void textsIn(long set, List<String> names, Map<String, String> found) {
    try {
      textsAmong(file.model().get(set), names, found, 0);
    } catch (BrokenRecordException e) {
      // A broken set says nothing more; the record's own fault is a finding of the file.
      return;
    }
  }

  private void textsAmong(Entity set, List<String> names, Map<String, String> found, int depth) {
    for (Entity p : mightBear(names, set)) {
      String own = p.text("Name").trim();
      String name = among(names, own);
      if (name != null && !found.containsKey(name)) {
        valueOf(p).ifPresent(value -> found.put(name, value));
      } else if (name == null && p.isA("IfcComplexProperty") && depth < MOST_NESTED) {
        textsAmong(p, names, found, depth + 1);
      }
    }
  }

  /** The first of some names that is written so, letter case aside, or null. */
  private static String among(List<String> names, String written) {
    for (String name : names) {
      if (written.equalsIgnoreCase(name)) {
        return name;
      }
    }
    return null;
  }

  /** Those properties of a set that may bear a name or hold one that does: few are decoded. */
  private List<Entity> mightBear(List<String> names, Entity set) {
    IfcModel model = file.model();
    var all = new ArrayList<Entity>();
    for (long id : set.refIds("HasProperties")) {
      Optional<EntityType> type = model.typeOf(id);
      if (type.isEmpty()) {
        sayOfMissing(set, id);
      } else if (type.get().isA("IfcComplexProperty") || mayBear(names, id)) {
        all.add(model.get(id));
      }
    }
    return all;
  }

  /** A property that is missing keeps no other of its set from speaking. */
  private void sayOfMissing(Entity set, long property) {
    if (!file.model().file().contains(property)) {
      String sentence = set + " refers to #" + property + ", which no record carries.";
      file.findings().add(FileFinding.DANGLING_REFERENCE, set.id(), "", sentence);
    }
  }

  private boolean mayBear(List<String> names, long property) {
    return file.model()
        .file()
        .plainFirstText(property)
        .map(own -> among(names, own) != null)
        .orElse(true);
  }

  private static Optional<String> valueOf(Entity p) {
    if (p.isA("IfcPropertySingleValue")) {
      return plain(p.value("NominalValue"));
    }
    String list = p.isA("IfcPropertyListValue") ? "ListValues" : "EnumerationValues";
    String joined =
        p.value(list).items().stream()
            .flatMap(v -> plain(v).stream())
            .collect(Collectors.joining(", "));
    return joined.isEmpty() ? Optional.empty() : Optional.of(joined);
  }

  private static Optional<String> plain(Value value) {
    return value
        .asText()
        .filter(t -> !t.isBlank())
        .or(() -> value.asEnum())
        .or(() -> number(value));
  }

  private static Optional<String> number(Value value) {
    if (value.asInt().isPresent()) {
      return Optional.of(Long.toString(value.asInt().getAsLong()));
    }
    return value.asReal().isPresent()
        ? Optional.of(Double.toString(value.asReal().getAsDouble()))
        : Optional.empty();
  }

  @Override
  public OptionalDouble quantity(String name) {
    List<Double> all = quantities(name);
    return all.isEmpty() || contradict(all)
        ? OptionalDouble.empty()
        : OptionalDouble.of(all.get(0));
  }

  /** Those of the named quantities that the element's sets give more than once and not alike. */
  List<String> contradictions(List<String> names) {
    var all = new ArrayList<Quantity>();
    sets().forEach(set -> addQuantities(set, names, all));
    return names.stream().filter(n -> contradict(values(all, n))).toList();
  }

  private static List<Double> values(List<Quantity> all, String name) {
    return all.stream().filter(q -> q.name.equalsIgnoreCase(name)).map(q -> q.value).toList();
  }

  /** Whether there is more than one set of quantities, so that they could contradict each other. */
  boolean hasSeveralQuantitySets() {
    int sets = 0;
    for (long set : file.relations().propertiesOf.all(element)) {
      sets += file.model().isA(set, "IfcElementQuantity") ? 1 : 0;
    }
    return sets > 1;
  }

  private static boolean contradict(List<Double> all) {
    return all.stream().anyMatch(v -> Math.abs(v - all.get(0)) > SAME * Math.abs(all.get(0)));
  }

  private List<Double> quantities(String name) {
    var all = new ArrayList<Quantity>();
    sets().forEach(set -> addQuantities(set, List.of(name), all));
    return values(all, name);
  }

  private void addQuantities(long set, List<String> names, List<Quantity> all) {
    try {
      if (file.model().isA(set, "IfcElementQuantity")) {
        addAmong(file.model().get(set).refs("Quantities"), names, all, 0);
      }
    } catch (BrokenRecordException e) {
      // A broken set says nothing; the record's own fault is a finding of the file.
      return;
    }
  }

  private void addAmong(
      List<Entity> quantities, List<String> names, List<Quantity> all, int depth) {
    for (Entity q : quantities) {
      if (q.isA("IfcPhysicalComplexQuantity") && depth < MOST_NESTED) {
        addAmong(q.refs("HasQuantities"), names, all, depth + 1);
      } else {
        String own = q.text("Name").trim();
        if (among(names, own) != null) {
          add(own, q, all);
        }
      }
    }
  }

  private void add(String name, Entity q, List<Quantity> all) {
    OptionalDouble value = q.number(Units.valueAttribute(q.kind()));
    try {
      if (value.isPresent()) {
        all.add(new Quantity(name, value.getAsDouble() * scale(q)));
      }
    } catch (BrokenRecordException e) {
      // Its unit cannot be read: this quantity says nothing, and keeps no other from speaking.
      return;
    }
  }

  private double scale(Entity quantity) {
    return quantity
        .ref("Unit")
        .flatMap(UnitReader::scaleOf)
        .orElse(file.units().ofQuantity(quantity.kind()));
  }
}
