package org.coatrun.shared.yaml;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Parses one YAML document into nodes that know their lines. */
public final class YamlTree {

  /** Longest file that is read, in characters. */
  public static final int MOST_CHARACTERS = 2_000_000;

  /** The parser's time grows with the square of a line. */
  private static final int LONGEST_LINE = 100_000;

  private static final int MOST_DEPTH = 24;
  private static final int MOST_NODES = 200_000;

  private final String file;
  private final YAMLParser parser;
  private int nodes;

  private YamlTree(String file, YAMLParser parser) {
    this.file = file;
    this.parser = parser;
  }

  /**
   * The tree of a text; an empty text is an empty set of fields.
   *
   * @param file name to use in messages
   * @throws JobFileException where the text is no YAML, more than one plain document, or beyond the
   *     limits of length and depth
   */
  public static YamlNode parse(String file, String text) {
    if (text.length() > MOST_CHARACTERS) {
      throw new JobFileException(file, 0, "", "the file is longer than 2 million characters.");
    }
    String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
    refuse(file, body);
    try (YAMLParser parser = new YAMLFactory().createParser(body)) {
      return new YamlTree(file, parser).document();
    } catch (JsonProcessingException e) {
      throw new JobFileException(file, line(e.getLocation()), "", "not valid YAML: " + first(e));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void refuse(String file, String text) {
    int line = 1;
    int begin = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        line++;
        begin = i + 1;
      } else if (c < ' ' && c != '\t' && c != '\r') {
        throw new JobFileException(
            file, line, "", "the file holds control characters; save it as plain UTF-8 text.");
      } else if (i - begin >= LONGEST_LINE) {
        throw new JobFileException(
            file, line, "", "the line is longer than 100,000 characters; break it up.");
      }
    }
  }

  private YamlNode document() throws IOException {
    JsonToken token = parser.nextToken();
    if (token == null) {
      return new YamlNode.Fields(1, Map.of());
    }
    YamlNode root = node(token, 0);
    if (parser.nextToken() != null) {
      throw fault("a second document begins here; keep one document in a file.");
    }
    return isEmpty(root) ? new YamlNode.Fields(1, Map.of()) : root;
  }

  private static boolean isEmpty(YamlNode node) {
    return node instanceof YamlNode.Scalar s && s.kind() == YamlNode.Kind.EMPTY;
  }

  private YamlNode node(JsonToken token, int depth) throws IOException {
    refuse();
    if (depth > MOST_DEPTH) {
      throw fault("the file is nested deeper than 24 levels.");
    }
    int line = line(parser.currentTokenLocation());
    return switch (token) {
      case START_OBJECT -> fields(line, depth);
      case START_ARRAY -> items(line, depth);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> scalar(line, YamlNode.Kind.NUMBER);
      case VALUE_TRUE, VALUE_FALSE -> scalar(line, YamlNode.Kind.TRUTH);
      case VALUE_NULL -> new YamlNode.Scalar(line, YamlNode.Kind.EMPTY, "");
      default -> scalar(line, YamlNode.Kind.TEXT);
    };
  }

  private YamlNode scalar(int line, YamlNode.Kind kind) throws IOException {
    return new YamlNode.Scalar(line, kind, parser.getText().strip());
  }

  private void refuse() throws IOException {
    if (++nodes > MOST_NODES) {
      throw fault("the file holds more than 200,000 values.");
    }
    if (parser.isCurrentAlias() || parser.getObjectId() != null) {
      throw fault("anchors (&) and aliases (*) are not used here; write the value out.");
    }
    if (parser.getTypeId() != null) {
      throw fault("tags (!) are not used here; write the value without one.");
    }
  }

  private YamlNode items(int line, int depth) throws IOException {
    List<YamlNode> values = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      values.add(node(t, depth + 1));
    }
    return new YamlNode.Items(line, values);
  }

  private YamlNode fields(int line, int depth) throws IOException {
    Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      int keyLine = line(parser.currentTokenLocation());
      YamlNode value = node(parser.nextToken(), depth + 1);
      if (entries.put(key, new YamlNode.Entry(keyLine, value)) != null) {
        throw new JobFileException(file, keyLine, key, "this key stands twice; keep one.");
      }
    }
    return new YamlNode.Fields(line, entries);
  }

  private JobFileException fault(String sentence) {
    return new JobFileException(file, line(parser.currentTokenLocation()), "", sentence);
  }

  private static int line(JsonLocation location) {
    return location == null ? 0 : Math.max(0, location.getLineNr());
  }

  private static String first(JsonProcessingException e) {
    String message = String.valueOf(e.getOriginalMessage());
    String line =
        message.lines().map(String::strip).filter(l -> !l.isEmpty()).findFirst().orElse("");
    return (line.isEmpty() ? "the text cannot be parsed" : line) + ".";
  }
}
