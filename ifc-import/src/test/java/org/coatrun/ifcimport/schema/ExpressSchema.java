package org.coatrun.ifcimport.schema;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The entities of a schema as its EXPRESS text has them (ISO 10303-11), as far as a table needs.
 */
final class ExpressSchema {

  private static final Pattern COMMENT = Pattern.compile("\\(\\*.*?\\*\\)", Pattern.DOTALL);
  private static final Pattern ENTITY =
      Pattern.compile("\\bENTITY\\s+(\\w+)(.*?)END_ENTITY;", Pattern.DOTALL);
  private static final Pattern SUPERTYPE = Pattern.compile("SUBTYPE\\s+OF\\s*\\(\\s*(\\w+)\\s*\\)");
  private static final Pattern RULES =
      Pattern.compile("(?m)^\\s*(?:DERIVE|INVERSE|UNIQUE|WHERE)\\s*$");

  private record Entity(Optional<String> supertype, List<String> attributes) {}

  private final Map<String, Entity> entities = new TreeMap<>();

  private ExpressSchema(String text) {
    Matcher m = ENTITY.matcher(COMMENT.matcher(text).replaceAll(" "));
    while (m.find()) {
      entities.put(m.group(1), entity(m.group(2)));
    }
  }

  /** From the library that holds the texts for the independent reader. */
  static ExpressSchema read(SchemaVersion version) throws IOException {
    String name =
        switch (version) {
          case IFC2X3 -> "IFC2X3_TC1";
          case IFC4 -> "IFC4_ADD2";
          case IFC4X3 -> "IFC4X3_ADD2";
        };
    try (InputStream in = ExpressSchema.class.getResourceAsStream("/schema/" + name + ".exp")) {
      return new ExpressSchema(new String(in.readAllBytes(), StandardCharsets.ISO_8859_1));
    }
  }

  private static Entity entity(String body) {
    int head = body.indexOf(';');
    Matcher m = SUPERTYPE.matcher(body.substring(0, head));
    Optional<String> supertype = m.find() ? Optional.of(m.group(1)) : Optional.empty();
    String explicit = RULES.split(body.substring(head + 1))[0];
    List<String> attributes =
        Stream.of(explicit.split(";"))
            .filter(s -> s.contains(":"))
            .flatMap(s -> Stream.of(s.substring(0, s.indexOf(':')).split(",")))
            .map(String::trim)
            // a narrowed type keeps the place of what it narrows
            .filter(a -> !a.startsWith("SELF\\"))
            .toList();
    return new Entity(supertype, attributes);
  }

  List<String> names() {
    return List.copyOf(entities.keySet());
  }

  boolean has(String name) {
    return entities.containsKey(name);
  }

  /** Explicit attributes, inherited ones first. */
  List<String> attributes(String name) {
    Entity e = entities.get(name);
    var all = new ArrayList<String>(e.supertype.map(this::attributes).orElse(List.of()));
    all.addAll(e.attributes);
    return all;
  }

  /** The entity itself and all that it is a kind of. */
  List<String> kinds(String name) {
    var all = new ArrayList<String>(List.of(name));
    entities.get(name).supertype.ifPresent(s -> all.addAll(kinds(s)));
    return all;
  }
}
