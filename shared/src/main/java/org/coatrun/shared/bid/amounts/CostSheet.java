package org.coatrun.shared.bid.amounts;

import java.math.BigDecimal;
import java.util.List;
import org.coatrun.shared.bid.labour.LabourBill;
import org.coatrun.shared.bid.material.MaterialOrder;
import org.coatrun.shared.bid.programme.ProgrammePlan;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.Prices;

/**
 * Money. Each item is rounded to a hundredth once; sums are sums of what is printed.
 *
 * @param items in fixed order
 * @param cost the sum of the items
 * @param overhead on cost
 * @param profit on cost and overhead
 * @param total of all
 * @param withoutThickness elements that must be coated and are in no amount
 */
public record CostSheet(
    String currency,
    List<CostItem> items,
    BigDecimal cost,
    BigDecimal overhead,
    BigDecimal profit,
    BigDecimal total,
    int withoutThickness) {

  public CostSheet {
    items = List.copyOf(items);
  }

  /** The cost of a job. */
  public static CostSheet of(
      MaterialOrder order,
      LabourBill labour,
      ProgrammePlan programme,
      int withoutThickness,
      Job job) {
    Prices p = job.prices();
    long machineDays = (long) programme.workingDays() * job.machine().machines();
    List<CostItem> items =
        List.of(
            CostItem.of("material", "prices.bag", order.bags(), "bags", p.bag()),
            CostItem.of(
                "bonding coat",
                "prices.bonding-gallon",
                order.wholeBondingGallons(),
                "gal",
                p.bondingGallon()),
            CostItem.of(
                "labour", "prices.person-hour", labour.personHours(), "person h", p.personHour()),
            CostItem.of(
                "machine and hose", "prices.machine-day", machineDays, "days", p.machineDay()),
            CostItem.of(
                "lift or scaffold", "prices.lift-day", labour.liftDays(), "days", p.liftDay()),
            CostItem.of(
                "deliveries", "prices.delivery", trucks(programme, order), "trucks", p.delivery()));
    BigDecimal cost = items.stream().map(CostItem::cost).reduce(CostItem.cents(0), BigDecimal::add);
    BigDecimal overhead = CostItem.cents(cost.doubleValue() * p.overhead().fraction());
    BigDecimal both = cost.add(overhead);
    BigDecimal profit = CostItem.cents(both.doubleValue() * p.profit().fraction());
    return new CostSheet(
        p.currency(), items, cost, overhead, profit, both.add(profit), withoutThickness);
  }

  /** Trucks of the plan; where no days are listed, full trucks. */
  private static long trucks(ProgrammePlan programme, MaterialOrder order) {
    return programme.deliveries().isEmpty() ? order.truckloads() : programme.trucks();
  }

  /** Items that are needed and have no price. */
  public List<CostItem> unpriced() {
    return items.stream().filter(CostItem::unpriced).toList();
  }

  /** Whether the total holds every item and every element that must be coated. */
  public boolean complete() {
    return withoutThickness == 0 && unpriced().isEmpty();
  }

  /** What the total lacks, in one clause; empty where it is complete. */
  public String lacks() {
    String prices = String.join(", ", unpriced().stream().map(CostItem::what).toList());
    String first = prices.isEmpty() ? "" : "no price for " + prices;
    String second = thicknesses();
    return first.isEmpty() || second.isEmpty() ? first + second : first + "; " + second;
  }

  private String thicknesses() {
    return switch (withoutThickness) {
      case 0 -> "";
      case 1 -> "1 element has no thickness";
      default -> withoutThickness + " elements have no thickness";
    };
  }

  /** One finding for each price that is missing. */
  List<Finding> findings() {
    return unpriced().stream()
        .map(
            item ->
                Finding.of(
                    WorkFinding.PRICE_MISSING,
                    item.key() + " is not stated; " + item.what() + " counts as zero."))
        .toList();
  }
}
