package org.coatrun.ifcimport.recognise;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words under headings, tried heading by heading in their order. What was asked once is remembered,
 * up to a bound. Safe for several threads.
 */
final class WordList {

  private static final int REMEMBERED = 20_000;

  /** The heading that a text falls under, and the word that says so. */
  record Hit(String heading, String word) {}

  private record Group(String heading, Pattern words) {}

  private final List<Group> groups = new ArrayList<>();
  private final Map<String, Optional<Hit>> known = new ConcurrentHashMap<>();

  private WordList() {}

  /** Reads a list that lies beside this class. */
  static WordList read(String resource) {
    var list = new WordList();
    String heading = "";
    var words = new ArrayList<String>();
    for (String line : lines(resource)) {
      if (line.isBlank() || line.charAt(0) == '#') {
        continue;
      }
      if (line.charAt(0) == '[') {
        list.close(heading, words);
        heading = line.substring(1, line.length() - 1);
        words.clear();
      } else {
        words.add(pattern(line));
      }
    }
    list.close(heading, words);
    return list;
  }

  private static List<String> lines(String resource) {
    try (var reader =
        new BufferedReader(
            new InputStreamReader(
                WordList.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
      return reader.lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void close(String heading, List<String> words) {
    if (!words.isEmpty()) {
      String any = "(?<![\\p{L}\\p{N}])(?:" + String.join("|", words) + ")(?![\\p{L}\\p{N}])";
      groups.add(new Group(heading, Pattern.compile(any)));
    }
  }

  private static String pattern(String word) {
    if (word.charAt(0) == '/') {
      return word.substring(1, word.length() - 1).replace(".*", "\\S*");
    }
    String plain = PlainText.of(word.replace("*", ""));
    return (word.startsWith("*") ? "[\\p{L}\\p{N}]*" : "")
        + Pattern.quote(plain)
        + (word.endsWith("*") ? "[\\p{L}\\p{N}]*" : "");
  }

  /** The first heading that has a word in the text. */
  Optional<Hit> find(String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<Hit> hit = known.get(text);
    if (hit == null) {
      hit = search(PlainText.of(text));
      if (known.size() < REMEMBERED) {
        known.put(text, hit);
      }
    }
    return hit;
  }

  private Optional<Hit> search(String plain) {
    for (Group group : groups) {
      Matcher m = group.words.matcher(plain);
      if (m.find()) {
        return Optional.of(new Hit(group.heading, m.group()));
      }
    }
    return Optional.empty();
  }
}
