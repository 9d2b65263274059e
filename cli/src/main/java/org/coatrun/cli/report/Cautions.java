package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.listing.Listing;

/** What every output says about its own limits. */
public final class Cautions {

  /** In full: for files. */
  public static final List<String> ALL =
      List.of(
          "This is a planning aid. It does not replace the judgement of those who answer for the"
              + " work.",
          "Ratings and thickness follow the tested listing, the adopted code and the engineer of"
              + " record; local codes govern.",
          "The maker's manual governs how the material is applied.",
          "Electrical work, lifts, scaffolds and work at an open edge need licensed or competent"
              + " persons.",
          "Dust needs respirators (N95 or better), eye and skin protection, and ventilation.",
          "Elements listed as unresolved are not in the sums: look at each of them.");

  /** In one line: for the screen. */
  public static final String SHORT =
      "A planning aid: the tested listing, the adopted code and the engineer of record govern.";

  private Cautions() {}

  /** What marks an output whose thicknesses come from an invented listing; empty for others. */
  public static Optional<String> mark(List<String> cautions) {
    return cautions.stream().filter(Listing.DEMONSTRATION::equals).findFirst();
  }

  /** The columns, with one more that marks every row where a listing is invented. */
  public static <T> List<Column<T>> marked(List<Column<T>> columns, List<String> cautions) {
    List<Column<T>> all = new ArrayList<>(columns);
    mark(cautions).ifPresent(text -> all.add(Column.of("caution", row -> text)));
    return List.copyOf(all);
  }

  /** Prints the one line, under the mark of an invented listing where there is one. */
  public static void print(PrintWriter out, List<String> cautions) {
    mark(cautions).ifPresent(out::println);
    out.println(SHORT);
  }
}
