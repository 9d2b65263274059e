package org.coatrun.ifcimport.read;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.coatrun.ifcimport.entity.IfcModel;

/** The names that the properties of a file bear: what none bears need not be looked for. */
final class PropertyNames {

  private final Supplier<Set<String>> names;

  /** Begins to gather them. */
  PropertyNames(IfcModel model, Workers workers) {
    names = workers.begin(() -> gather(model, workers));
  }

  /** Whether any property of the file bears a name, upper and lower case alike. */
  boolean has(String name) {
    return names.get().contains(name);
  }

  private static Set<String> gather(IfcModel model, Workers workers) {
    Set<String> written = ConcurrentHashMap.newKeySet();
    workers.each(model.idsOf("IfcProperty"), id -> written.add(name(model, id)));
    var names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    names.addAll(written);
    return names;
  }

  private static String name(IfcModel model, long id) {
    Optional<String> plain = model.file().plainFirstText(id);
    return plain.orElseGet(() -> model.find(id).map(p -> p.text("Name").trim()).orElse(""));
  }
}
