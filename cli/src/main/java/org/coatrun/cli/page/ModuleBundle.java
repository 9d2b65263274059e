package org.coatrun.cli.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Joins ECMAScript modules into one script: each becomes a constant made by a function that returns
 * its exports. Modules are added in the order of their dependence.
 *
 * <p>Known forms: {@code import {…} from}, {@code import * as … from}, {@code export {…}}, {@code
 * export {…} from}, and {@code export} before a function, class or constant; all at the beginning
 * of a statement. Whatever is left over is an error, so that nothing fails only in the browser.
 */
final class ModuleBundle {

  private static final String START = "(?<=^|[;}\\n*/])";
  private static final Pattern IMPORT_ALL =
      Pattern.compile(START + "import\\s*\\*\\s*as\\s+([\\w$]+)\\s+from\\s*[\"']([^\"']+)[\"'];?");
  private static final Pattern IMPORT =
      Pattern.compile(START + "import\\s*\\{([^}]*)}\\s*from\\s*[\"']([^\"']+)[\"'];?");
  private static final Pattern EXPORT_FROM =
      Pattern.compile(START + "export\\s*\\{([^}]*)}\\s*from\\s*[\"']([^\"']+)[\"'];?");
  private static final Pattern EXPORT_LIST = Pattern.compile(START + "export\\s*\\{([^}]*)};?");
  private static final Pattern EXPORT_DECLARATION =
      Pattern.compile(START + "export\\s+((?:async\\s+)?function|class|const)\\s+([\\w$]+)");
  private static final Pattern LEFT_OVER =
      Pattern.compile(START + "(?:import|export)\\s*[{*\"'a-z]");

  private final Map<String, String> constants = new LinkedHashMap<>();
  private final StringBuilder script = new StringBuilder("\"use strict\";\n");

  /**
   * Adds a module.
   *
   * @param name by which later modules import it, without a leading {@code ./}
   * @throws IllegalArgumentException on an import of a module not added before, or a form not known
   */
  ModuleBundle add(String name, String source) {
    StringJoiner exports = new StringJoiner(",", "{", "}");
    String body = source.replace("\r\n", "\n");
    body = replace(IMPORT_ALL, body, m -> "const " + m.group(1) + "=" + constant(m.group(2)) + ";");
    body =
        replace(
            IMPORT,
            body,
            m ->
                "const {"
                    + m.group(1).replaceAll("\\s+as\\s+", ":")
                    + "}="
                    + constant(m.group(2))
                    + ";");
    body = replace(EXPORT_FROM, body, m -> passOn(m, exports));
    body = replace(EXPORT_LIST, body, m -> list(m.group(1), "", exports));
    body =
        replace(
            EXPORT_DECLARATION,
            body,
            m -> {
              exports.add(m.group(2));
              return m.group(1) + " " + m.group(2);
            });
    Matcher rest = LEFT_OVER.matcher(body);
    if (rest.find()) {
      String text = body.substring(rest.start(), Math.min(body.length(), rest.start() + 60));
      throw new IllegalArgumentException("module " + name + " has a form not known: " + text);
    }
    String constant = "module" + constants.size();
    constants.put(name, constant);
    script.append("const ").append(constant).append("=(()=>{\n").append(body);
    script.append("\nreturn ").append(exports).append(";})();\n");
    return this;
  }

  /** The whole as one classic script. */
  String script() {
    return script.toString();
  }

  private String passOn(Matcher m, StringJoiner exports) {
    return list(m.group(1), constant(m.group(2)) + ".", exports);
  }

  private static String list(String names, String owner, StringJoiner exports) {
    for (String entry : names.split(",")) {
      String[] pair = entry.trim().split("\\s+as\\s+");
      if (!pair[0].isEmpty()) {
        exports.add(pair[pair.length - 1] + ":" + owner + pair[0]);
      }
    }
    return "";
  }

  private String constant(String path) {
    String name = path.startsWith("./") ? path.substring(2) : path;
    String constant = constants.get(name);
    if (constant == null) {
      throw new IllegalArgumentException("a module imports " + path + ", which is not there yet");
    }
    return constant;
  }

  private static String replace(Pattern pattern, String text, Function<Matcher, String> by) {
    Matcher m = pattern.matcher(text);
    StringBuilder out = new StringBuilder();
    while (m.find()) {
      m.appendReplacement(out, Matcher.quoteReplacement(by.apply(m)));
    }
    return m.appendTail(out).toString();
  }
}
