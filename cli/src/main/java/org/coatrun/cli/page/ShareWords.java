package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Status;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.model.ElementId;

/** Says what a page of a large model left out. */
final class ShareWords {

  private static final double FT2_PER_M2 = 1 / (0.3048 * 0.3048);

  private final Takeoff takeoff;

  ShareWords(Takeoff takeoff) {
    this.takeoff = takeoff;
  }

  /** The whole first, then each thing that is missing; empty where nothing is. */
  List<String> sentences(
      List<Line> shown, int around, int allAround, long plain, int listedFindings) {
    List<String> all = new ArrayList<>();
    lines(shown, all);
    if (around < allAround) {
      all.add(say("%,d slabs and walls, the smallest, are not shown.", allAround - around));
    }
    if (plain > 0) {
      all.add(
          say(
              "%,d elements, those with the most triangles for their size, are drawn as plain"
                  + " boxes without what covers them; their numbers are of their true shape.",
              plain));
    }
    if (listedFindings < takeoff.findings().size()) {
      all.add(
          say(
              "Of %,d findings the list has %,d, the gravest first; findings.csv has all.",
              takeoff.findings().size(), listedFindings));
    }
    return List.copyOf(all);
  }

  private void lines(List<Line> shown, List<String> all) {
    List<Line> missing = missing(shown);
    if (missing.isEmpty()) {
      return;
    }
    all.add(
        say(
            "This model is too large to show whole: %,d of its %,d members and decks stand here one"
                + " by one. Totals are of all of them; members.csv and decks.csv list all.",
            shown.size(), shown.size() + missing.size()));
    long leftOut = count(missing, Status.LEFT_OUT);
    long unresolved = count(missing, Status.UNRESOLVED);
    if (leftOut > 0) {
      all.add(say("Not shown: %,d that the takeoff leaves out, such as fasteners.", leftOut));
    }
    if (unresolved > 0) {
      all.add(say("Not shown: %,d unresolved ones.", unresolved));
    }
    counted(missing, all);
  }

  private void counted(List<Line> missing, List<String> all) {
    long count = count(missing, Status.COUNTED);
    if (count > 0) {
      double most = exposed(missing).max().orElse(0);
      double whole =
          takeoff.memberTotals().exposed().plus(takeoff.deckTotals().exposed()).squareMetres();
      all.add(
          say(
              "Not shown: %,d counted ones with the least exposed area, none more than %.2f m²"
                  + " (%.1f ft²), together %.1f %% of it.",
              count, most, most * FT2_PER_M2, 100 * exposed(missing).sum() / whole));
    }
  }

  private List<Line> missing(List<Line> shown) {
    Set<ElementId> there = new HashSet<>();
    shown.forEach(l -> there.add(l.identity().id()));
    return Stream.<Collection<? extends Line>>of(takeoff.members(), takeoff.decks())
        .<Line>flatMap(Collection::stream)
        .filter(l -> !there.contains(l.identity().id()))
        .toList();
  }

  private static long count(List<Line> lines, Status status) {
    return lines.stream().filter(l -> l.outcome().status() == status).count();
  }

  private static DoubleStream exposed(List<Line> lines) {
    return lines.stream()
        .flatMap(l -> l.outcome().quantities().stream())
        .map(Quantities::ledger)
        .mapToDouble(l -> l.exposed().squareMetres());
  }

  private static String say(String sentence, Object... numbers) {
    return String.format(Locale.ROOT, sentence, numbers);
  }
}
