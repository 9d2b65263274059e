package org.coatrun.ifcimport.read;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.coatrun.ifcimport.entity.IfcModel;

/** The names that the properties of a file bear: what none bears need not be looked for. */
final class PropertyNames {

  private static final int SLICE = 4096;

  private final Supplier<Set<String>> names;

  /** Answers given; the program asks for few names. */
  private final Map<String, Boolean> asked = new ConcurrentHashMap<>();

  /** Begins to gather them. */
  PropertyNames(IfcModel model, Workers workers) {
    names = workers.begin(() -> gather(model, workers));
  }

  /** Whether any property of the file bears a name, upper and lower case alike. */
  boolean has(String name) {
    Boolean known = asked.get(name);
    if (known == null) {
      known = names.get().contains(name); // may do other work while it waits: no lock is held
      asked.put(name, known);
    }
    return known;
  }

  private static Set<String> gather(IfcModel model, Workers workers) {
    Set<String> names = new ConcurrentSkipListSet<>(String.CASE_INSENSITIVE_ORDER);
    long[] ids = model.idsOf("IfcProperty");
    int slices = (ids.length + SLICE - 1) / SLICE;
    workers.each(
        LongStream.range(0, slices).toArray(),
        slice -> {
          int from = (int) slice * SLICE;
          long[] some = Arrays.copyOfRange(ids, from, Math.min(ids.length, from + SLICE));
          names.addAll(model.file().plainFirstTexts(some, id -> names.add(decoded(model, id))));
        });
    return names;
  }

  private static String decoded(IfcModel model, long id) {
    return model.find(id).map(p -> p.text("Name").trim()).orElse("");
  }
}
