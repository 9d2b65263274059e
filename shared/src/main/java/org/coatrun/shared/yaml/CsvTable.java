package org.coatrun.shared.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A CSV file with a header, read with line numbers: commas, double quotes as in RFC 4180, blank
 * lines and lines that begin with # left out.
 *
 * @param header names of the columns, trimmed
 */
public record CsvTable(String file, List<String> header, List<Row> rows) {

  private static final int MOST_ROWS = 500_000;

  /** One row and the line it begins on. */
  public record Row(int line, List<String> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  public CsvTable {
    header = List.copyOf(header);
    rows = List.copyOf(rows);
  }

  /**
   * Parses a text.
   *
   * @throws JobFileException where a quote is not closed, a row has another number of cells than
   *     the header, or the text is empty or too long
   */
  public static CsvTable parse(String file, String text) {
    String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
    List<Row> all = new Scanner(file, body).rows();
    if (all.isEmpty()) {
      throw new JobFileException(
          file, 1, "", "the file is empty; its first line names the columns.");
    }
    List<String> header = all.get(0).cells();
    for (Row row : all) {
      if (row.cells().size() != header.size()) {
        throw new JobFileException(
            file,
            row.line(),
            "",
            "this row has " + row.cells().size() + " cells, the header " + header.size() + ".");
      }
    }
    return new CsvTable(file, header, all.subList(1, all.size()));
  }

  /**
   * The index of a column.
   *
   * @throws JobFileException where there is none of that name
   */
  public int column(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new JobFileException(
                    file, 1, name, "this column is missing; there are: " + header + "."));
  }

  /** The index of a column, where there is one of that name. */
  public Optional<Integer> find(String name) {
    int i = header.indexOf(name);
    return i < 0 ? Optional.empty() : Optional.of(i);
  }

  /** One pass over the text. */
  private static final class Scanner {
    private final String file;
    private final String text;
    private int at;
    private int line = 1;

    Scanner(String file, String text) {
      this.file = file;
      this.text = text;
    }

    List<Row> rows() {
      List<Row> rows = new ArrayList<>();
      while (at < text.length()) {
        int begin = line;
        boolean comment = text.charAt(at) == '#';
        List<String> cells = row(comment);
        boolean blank = cells.stream().allMatch(String::isEmpty);
        if (!blank && !comment) {
          rows.add(new Row(begin, cells));
        }
        if (rows.size() > MOST_ROWS) {
          throw new JobFileException(file, line, "", "the file has more than 500,000 rows.");
        }
      }
      return rows;
    }

    private List<String> row(boolean comment) {
      List<String> cells = new ArrayList<>();
      while (true) {
        cells.add(!comment && peek() == '"' ? quoted() : plain());
        if (peek() != ',') {
          break;
        }
        at++;
      }
      if (peek() == '\r') {
        at++;
      }
      if (peek() == '\n') {
        at++;
        line++;
      } else if (at < text.length()) {
        throw new JobFileException(file, line, "", "text follows a closing quote; add a comma.");
      }
      return cells;
    }

    private String plain() {
      int begin = at;
      while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
        at++;
      }
      return text.substring(begin, at).strip();
    }

    private String quoted() {
      int begin = line;
      StringBuilder cell = new StringBuilder();
      at++;
      while (at < text.length()) {
        char c = text.charAt(at++);
        if (c == '"' && peek() != '"') {
          return cell.toString().strip();
        }
        if (c == '"') {
          at++;
        }
        if (c == '\n') {
          line++;
        }
        cell.append(c);
      }
      throw new JobFileException(file, begin, "", "a quote opens here and is never closed.");
    }

    private char peek() {
      return at < text.length() ? text.charAt(at) : '\0';
    }
  }
}
