package org.coatrun.shared.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.rules.Rounding;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.JobFileException;
import org.coatrun.shared.yaml.Key;
import org.coatrun.shared.yaml.RecordReader;

/** A tested listing. */
public record Listing(
    @Key(note = "name, as reports print it") String name,
    @Key(note = "where it comes from and when", fallback = "\"source not stated\"") String source,
    @Key(
            note = "yes: invented for demonstration; every output that uses it says so",
            fallback = "no")
        boolean demonstration,
    @Key(note = "least density in place that was tested", least = "5 pcf", most = "100 pcf")
        Optional<Density> density,
    @Key(note = "how thickness is rounded", fallback = "sixteenth-inch") Rounding rounding,
    @Key(
            note = "least thickness [UFGS 07 81 00: 3/8 in]",
            fallback = "3/8 in",
            least = "0 in",
            most = "6 in")
        Length minimumThickness,
    @Key(note = "tables by section factor") List<ListedTable> tables,
    @Key(note = "CSV file beside this one with more tables") Optional<String> tablesFile,
    @Key(note = "column equations") List<ListedEquation> columnEquations,
    @Key(note = "hollow column equations") List<ListedHollow> hollowEquations,
    @Key(note = "tested beams for substitution") List<ListedBeam> beams,
    @Key(note = "deck") List<ListedDeck> decks) {

  /** Printed wherever a demonstration listing was used. */
  public static final String DEMONSTRATION =
      "DEMONSTRATION LISTING: invented numbers, not for any real work.";

  /** Gives the text of a file that stands beside the listing. */
  @FunctionalInterface
  public interface Beside {
    /**
     * The text of a file.
     *
     * @throws JobFileException where there is none
     */
    String text(String fileName);
  }

  /** Copies the lists; an empty listing is refused when it is read, once its tables are in. */
  public Listing {
    tables = List.copyOf(tables);
    columnEquations = List.copyOf(columnEquations);
    hollowEquations = List.copyOf(hollowEquations);
    beams = List.copyOf(beams);
    decks = List.copyOf(decks);
  }

  /**
   * Reads a listing and the tables beside it.
   *
   * @throws JobFileException with one sentence about the first thing that is wrong
   */
  public static Listing parse(String file, String text, Beside beside) {
    Listing read = RecordReader.read(file, text, Listing.class);
    Listing whole = read.tablesFile().map(f -> read.with(csv(file, f, beside))).orElse(read);
    if (whole.isEmpty()) {
      throw new JobFileException(
          file,
          0,
          "",
          "the listing holds no table, equation, beam or deck to take thickness from.");
    }
    return whole;
  }

  private static List<ListedTable> csv(String file, String name, Beside beside) {
    if (name.contains("/") || name.contains("\\") || name.startsWith(".")) {
      throw new JobFileException(
          file, 0, "tables-file", "'" + name + "' is not a plain file name beside the listing.");
    }
    return TablesCsv.parse(name, beside.text(name));
  }

  private Listing with(List<ListedTable> more) {
    List<ListedTable> all = new ArrayList<>(tables);
    all.addAll(more);
    return new Listing(
        name,
        source,
        demonstration,
        density,
        rounding,
        minimumThickness,
        all,
        Optional.empty(),
        columnEquations,
        hollowEquations,
        beams,
        decks);
  }

  private boolean isEmpty() {
    return tables.isEmpty()
        && columnEquations.isEmpty()
        && hollowEquations.isEmpty()
        && beams.isEmpty()
        && decks.isEmpty();
  }
}
