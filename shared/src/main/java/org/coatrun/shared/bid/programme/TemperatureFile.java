package org.coatrun.shared.bid.programme;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.yaml.CsvTable;
import org.coatrun.shared.yaml.JobFileException;
import org.coatrun.shared.yaml.QuantityText;

/**
 * Reads temperatures by time: a CSV file with the columns {@code time} (2026-01-05T07:00 or
 * 2026-01-05 07:00, local) and {@code temperature} ({@code 38 F}, {@code 3.5 C}).
 */
public final class TemperatureFile {

  private static final double COLDEST_CELSIUS = -90;
  private static final double HOTTEST_CELSIUS = 90;

  private TemperatureFile() {}

  /**
   * Parses a text.
   *
   * @throws JobFileException with one sentence about the first row that is wrong
   */
  public static NavigableMap<LocalDateTime, Temperature> parse(String file, String text) {
    CsvTable csv = CsvTable.parse(file, text);
    int time = csv.column("time");
    int temperature = csv.column("temperature");
    NavigableMap<LocalDateTime, Temperature> record = new TreeMap<>();
    for (CsvTable.Row row : csv.rows()) {
      LocalDateTime at = time(file, row, row.cells().get(time));
      Temperature value = temperature(file, row, row.cells().get(temperature));
      if (record.put(at, value) != null) {
        throw new JobFileException(
            file, row.line(), "time", "two rows give a temperature for " + at + ".");
      }
    }
    if (record.isEmpty()) {
      throw new JobFileException(file, 1, "", "there is no row under the header.");
    }
    return record;
  }

  private static LocalDateTime time(String file, CsvTable.Row row, String cell) {
    try {
      return LocalDateTime.parse(cell.replace(' ', 'T'));
    } catch (DateTimeParseException e) {
      throw new JobFileException(
          file,
          row.line(),
          "time",
          "'" + cell + "' is not a time; write it as 2026-01-05T07:00 or 2026-01-05 07:00.");
    }
  }

  private static Temperature temperature(String file, CsvTable.Row row, String cell) {
    try {
      Temperature value = QuantityText.parse(cell, Temperature.class);
      if (value.celsius() < COLDEST_CELSIUS || value.celsius() > HOTTEST_CELSIUS) {
        throw new IllegalArgumentException("'" + cell + "' is no temperature of any place.");
      }
      return value;
    } catch (IllegalArgumentException e) {
      throw new JobFileException(file, row.line(), "temperature", e.getMessage());
    }
  }
}
