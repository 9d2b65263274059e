package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.Locale;
import org.coatrun.shared.bid.amounts.AlternateAmounts;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.amounts.CostSheet;
import org.coatrun.shared.bid.amounts.Headline;
import org.coatrun.shared.bid.material.MaterialOrder;
import org.coatrun.shared.bid.material.MaterialSum;
import org.coatrun.shared.bid.programme.ProgrammePlan;

/** The amounts of a bid on the screen: what to order, how long it takes, what it costs. */
final class AmountScreen {

  private final PrintWriter out;
  private final BidAmounts amounts;
  private final UnitSystem units;

  private AmountScreen(PrintWriter out, BidAmounts amounts, UnitSystem units) {
    this.out = out;
    this.amounts = amounts;
    this.units = units;
  }

  static void print(PrintWriter out, BidAmounts amounts, UnitSystem units) {
    AmountScreen screen = new AmountScreen(out, amounts, units);
    screen.sums();
    screen.alternates();
  }

  private void sums() {
    ProgrammePlan programme = amounts.programme();
    CostSheet money = amounts.money();
    material();
    out.printf(
        Locale.ROOT,
        "Labour:      %,.1f crew hours, %,.1f person hours%n",
        amounts.labour().total().crewHours(),
        amounts.labour().personHours());
    out.printf(
        Locale.ROOT,
        "Programme:   %,d working days, at most %,d bags a day%n",
        programme.workingDays(),
        programme.mostBagsInADay());
    out.printf(
        Locale.ROOT,
        "Inspection:  %,d thickness readings, %,d density and as many bond samples%n",
        amounts.inspection().readings(),
        amounts.inspection().samples());
    out.printf(
        Locale.ROOT,
        "Money:       %s %,.2f%s%n",
        money.currency(),
        money.total(),
        money.complete() ? "" : ", incomplete: " + money.lacks());
    out.println();
  }

  private void material() {
    MaterialSum all = amounts.material().total();
    MaterialOrder order = amounts.order();
    out.printf(
        Locale.ROOT,
        "Material:    %s in place by area x thickness, %s by the true offset volume%n",
        units.showMaterial(all.byArea()),
        units.showMaterial(all.byOffset()));
    out.printf(
        Locale.ROOT,
        "Bags:        %,d bags of %s each, %s with losses; %,d pallets, %,d trucks%n",
        order.bags(),
        units.showBag(order.theoreticalYield()),
        units.showBag(order.adjustedYield()),
        order.pallets(),
        amounts.programme().trucks());
  }

  private void alternates() {
    if (amounts.alternates().isEmpty()) {
      return;
    }
    TextTable table =
        new TextTable(1, "Alternate, against the bid", "Bags", "Person h", "Days", "Money");
    for (AlternateAmounts alternate : amounts.alternates()) {
      Headline by = alternate.difference();
      table.row(
          alternate.name(),
          String.format(Locale.ROOT, "%+,d", by.bags()),
          String.format(Locale.ROOT, "%+,.1f", by.personHours()),
          String.format(Locale.ROOT, "%+,d", by.workingDays()),
          String.format(Locale.ROOT, "%+,.2f", by.total()));
    }
    table.print(out);
    out.println();
  }
}
