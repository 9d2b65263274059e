package org.coatrun.cli.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Joins ECMAScript modules into one script: each becomes a constant made by a function that returns
 * its exports. Modules are added in the order of their dependence.
 *
 * <p>Known forms: {@code import {…} from}, {@code import * as … from}, {@code export {…}}, {@code
 * export {…} from}, and {@code export} before a function, class or constant; all at the beginning
 * of a statement. Whatever else begins so is an error, so that nothing fails only in the browser.
 */
final class ModuleBundle {

  private static final Pattern FORM =
      Pattern.compile(
          "import\\s*\\*\\s*as\\s+(?<all>[\\w$]+)\\s+from\\s*[\"'](?<allOf>[^\"']+)[\"'];?"
              + "|import\\s*\\{(?<some>[^}]*)}\\s*from\\s*[\"'](?<someOf>[^\"']+)[\"'];?"
              + "|export\\s*\\{(?<list>[^}]*)}(?:\\s*from\\s*[\"'](?<listOf>[^\"']+)[\"'])?;?"
              + "|export\\s+(?<kind>(?:async\\s+)?function|class|const)\\s+(?<declared>[\\w$]+)"
              + "|(?:import|export)\\s*[{*\"'a-z].{0,50}");

  /** What both words end in: a text is found many times faster than a pattern is. */
  private static final String END_OF_WORD = "port";

  private static final int WORD = "export".length();
  private static final String BEFORE_STATEMENTS = ";}\n*/";

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
    String body = body(name, source.replace("\r\n", "\n"), exports);
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

  private String body(String name, String text, StringJoiner exports) {
    StringBuilder out = new StringBuilder(text.length());
    Matcher form = FORM.matcher(text);
    int done = 0;
    for (int at = next(text, 0); at >= 0; at = next(text, Math.max(at + WORD, done))) {
      if (form.region(at, text.length()).lookingAt()) {
        out.append(text, done, at).append(replacement(name, form, exports));
        done = form.end();
      }
    }
    return out.append(text, done, text.length()).toString();
  }

  /** Where the next statement begins that may import or export, or -1. */
  private static int next(String text, int from) {
    int end = text.indexOf(END_OF_WORD, from);
    while (end >= 0 && !isStatement(text, end + END_OF_WORD.length() - WORD)) {
      end = text.indexOf(END_OF_WORD, end + 1);
    }
    return end < 0 ? -1 : end + END_OF_WORD.length() - WORD;
  }

  private static boolean isStatement(String text, int at) {
    return (text.startsWith("import", at) || text.startsWith("export", at))
        && (at == 0 || BEFORE_STATEMENTS.indexOf(text.charAt(at - 1)) >= 0);
  }

  private String replacement(String name, Matcher form, StringJoiner exports) {
    if (form.group("all") != null) {
      return "const " + form.group("all") + "=" + constant(form.group("allOf")) + ";";
    }
    if (form.group("some") != null) {
      String names = form.group("some").replaceAll("\\s+as\\s+", ":");
      return "const {" + names + "}=" + constant(form.group("someOf")) + ";";
    }
    if (form.group("list") != null) {
      String of = form.group("listOf");
      list(form.group("list"), of == null ? "" : constant(of) + ".", exports);
      return "";
    }
    if (form.group("declared") != null) {
      exports.add(form.group("declared"));
      return form.group("kind") + " " + form.group("declared");
    }
    throw new IllegalArgumentException("module " + name + " has a form not known: " + form.group());
  }

  private static void list(String names, String owner, StringJoiner exports) {
    for (String entry : names.split(",")) {
      String[] pair = entry.trim().split("\\s+as\\s+");
      if (!pair[0].isEmpty()) {
        exports.add(pair[pair.length - 1] + ":" + owner + pair[0]);
      }
    }
  }

  private String constant(String path) {
    String name = path.startsWith("./") ? path.substring(2) : path;
    String constant = constants.get(name);
    if (constant == null) {
      throw new IllegalArgumentException("a module imports " + path + ", which is not there yet");
    }
    return constant;
  }
}
