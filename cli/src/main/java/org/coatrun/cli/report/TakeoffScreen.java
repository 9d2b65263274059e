package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Status;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.model.Member;

/** A takeoff on the screen: steel by storey and section, decks by storey, what is not counted. */
public final class TakeoffScreen {

  private static final String NO_STOREY = "(no storey)";
  private static final String NO_SECTION = "(no section name)";

  private final PrintWriter out;
  private final Takeoff takeoff;
  private final UnitSystem units;

  private TakeoffScreen(PrintWriter out, Results results, UnitSystem units) {
    this.out = out;
    this.takeoff = results.takeoff();
    this.units = units;
  }

  /** Prints the takeoff in {@code units}. */
  public static void print(PrintWriter out, Results results, UnitSystem units) {
    TakeoffScreen screen = new TakeoffScreen(out, results, units);
    screen.members();
    screen.decks();
    screen.notCounted();
    BidScreen.print(out, results, units);
    results.amounts().ifPresent(amounts -> AmountScreen.print(out, amounts, units));
    FindingSummary.print(out, screen.takeoff.findings());
    out.println();
    out.println(Cautions.SHORT);
  }

  private void members() {
    TextTable table =
        new TextTable(
            2,
            "Storey",
            "Section",
            "Members",
            "Length, " + units.lengthUnit(),
            "Weight, " + units.weightUnit(),
            "Covered, " + units.areaUnit(),
            "Exposed, " + units.areaUnit());
    Takeoff.groups(counted(takeoff.members()), Line::storeyName)
        .forEach((storey, lines) -> storey(table, storey, lines));
    row(table, "All steel", "", takeoff.memberTotals());
    table.print(out);
    out.println();
  }

  private void storey(TextTable table, String storey, List<MemberLine> lines) {
    Map<String, List<MemberLine>> sections =
        lines.stream()
            .collect(
                Collectors.groupingBy(
                    line -> line.member().section().name(), TreeMap::new, Collectors.toList()));
    String name = storey.isEmpty() ? NO_STOREY : storey;
    sections.forEach(
        (section, group) ->
            row(table, name, section.isEmpty() ? NO_SECTION : section, Totals.of(group)));
    row(table, name, "all", Totals.of(lines));
    table.rule();
  }

  private void row(TextTable table, String storey, String section, Totals totals) {
    table.row(
        storey,
        section,
        Integer.toString(totals.counted()),
        units.show(totals.length()),
        units.show(totals.weight()),
        units.show(totals.covered()),
        units.show(totals.exposed()));
  }

  private void decks() {
    List<DeckLine> counted = counted(takeoff.decks());
    if (counted.isEmpty()) {
      return;
    }
    TextTable table =
        new TextTable(
            1, "Deck on", "Decks", "Covered, " + units.areaUnit(), "Exposed, " + units.areaUnit());
    Takeoff.groups(counted, Line::storeyName)
        .forEach((storey, lines) -> deckRow(table, storey, Totals.of(lines)));
    table.rule();
    deckRow(table, "All deck", takeoff.deckTotals());
    table.print(out);
    out.println();
  }

  private void deckRow(TextTable table, String storey, Totals totals) {
    table.row(
        storey.isEmpty() ? NO_STOREY : storey,
        Integer.toString(totals.counted()),
        units.show(totals.covered()),
        units.show(totals.exposed()));
  }

  private void notCounted() {
    out.println("Members: " + split(takeoff.memberTotals()));
    out.println("Decks:   " + split(takeoff.deckTotals()));
    reasons(takeoff.members()).forEach((why, n) -> out.printf("  %6d  %s%n", n, why));
    out.println();
  }

  private static String split(Totals totals) {
    return totals.all()
        + " = "
        + totals.counted()
        + " counted + "
        + totals.leftOut()
        + " left out + "
        + totals.unresolved()
        + " unresolved";
  }

  // Left out by material, unresolved by finding: the reasons in full stand in the files.
  private static Map<String, Long> reasons(List<MemberLine> lines) {
    return lines.stream()
        .filter(line -> line.outcome().status() == Status.LEFT_OUT)
        .collect(
            Collectors.groupingBy(TakeoffScreen::kindLeftOut, TreeMap::new, Collectors.counting()));
  }

  private static String kindLeftOut(MemberLine line) {
    Member member = line.member();
    return "left out: "
        + (member.classification().isSteel()
            ? Words.of(member.role())
            : member.classification().substance().word());
  }

  private static <L extends Line> List<L> counted(List<L> lines) {
    return lines.stream().filter(line -> line.outcome().status() == Status.COUNTED).toList();
  }
}
