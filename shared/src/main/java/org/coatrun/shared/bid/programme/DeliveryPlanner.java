package org.coatrun.shared.bid.programme;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.rules.Bags;

/**
 * Plans deliveries: as late as the lead time and the trucks of a day allow, each truck as full as
 * the room and the shelf life allow, bags used in the order they came.
 *
 * <p>Walking back from the last day gives the least that must have come by each day; nothing that
 * keeps to the lead time and the trucks of a day can have less in the room. So where this least
 * does not fit, no plan does, and the plan says so instead of letting the crew stand.
 */
final class DeliveryPlanner {

  private final OpenedBags opened;
  private final DeliveryTerms terms;
  private final WorkCalendar calendar;
  private final long unit;
  private final long allPallets;

  DeliveryPlanner(long[] opened, DeliveryTerms terms, WorkCalendar calendar) {
    this.opened = new OpenedBags(opened);
    this.terms = terms;
    this.calendar = calendar;
    this.unit = terms.packing().bagsPerPallet();
    this.allPallets = packs(this.opened.all());
  }

  /** A day on which more stands in the room than it takes. */
  record Overfull(int day, long pallets) {}

  /** Deliveries in order, and the days that the room is too small for. */
  record Plan(List<Delivery> deliveries, List<Overfull> overfull) {}

  Plan plan() {
    List<Delivery> deliveries = new ArrayList<>();
    List<Overfull> overfull = new ArrayList<>();
    List<Long> least = leastByDay();
    int first = lastDeliveryDay() - least.size() + 1;
    long come = 0;
    for (int i = 0; i < least.size(); i++) {
      long need = least.get(i) - come;
      if (need > 0) {
        int day = first + i;
        long free = free(day, come);
        if (need > free) {
          overfull.add(new Overfull(day, need - free + terms.room().orElseThrow()));
        }
        long load = load(day, come, need, free);
        deliveries.add(delivery(day, come, load));
        come += load;
      }
    }
    return new Plan(deliveries, overfull);
  }

  private int lastDeliveryDay() {
    return opened.days() - terms.leadDays();
  }

  /** Pallets that must have come by each day, from the first day that needs one to the last. */
  private List<Long> leastByDay() {
    List<Long> back = new ArrayList<>();
    long least = allPallets;
    for (int day = lastDeliveryDay(); least > 0; day--) {
      back.add(least);
      least = Math.max(packs(opened.by(terms.firstUse(day - 1))), least - terms.palletsPerDay());
    }
    List<Long> forward = new ArrayList<>(back.size());
    for (int i = back.size() - 1; i >= 0; i--) {
      forward.add(back.get(i));
    }
    return forward;
  }

  /** Pallets that the room still takes when trucks come. */
  private long free(int day, long come) {
    if (terms.room().isEmpty()) {
      return Long.MAX_VALUE;
    }
    long stock = bags(come) - opened.by(terms.morningAfter(day) - 1);
    return terms.room().getAsLong() - packs(stock);
  }

  /** Full trucks, unless that is more than the job takes, the room holds or the bags keep. */
  private long load(int day, long come, long need, long free) {
    long full = packs(need, terms.packing().palletsPerTruck()) * terms.packing().palletsPerTruck();
    long keeps = used(opened.by(opened.lastWithin(day, terms.shelfLife(), calendar))) - come;
    long wanted = Math.min(Math.min(full, allPallets - come), Math.min(free, keeps));
    return Math.max(need, wanted);
  }

  /** Pallets of which every bag is opened; the last of the job may be short. */
  private long used(long bags) {
    return bags == opened.all() ? allPallets : bags / unit;
  }

  private Delivery delivery(int day, long come, long load) {
    int trucks = (int) packs(load, terms.packing().palletsPerTruck());
    long after = bags(come + load);
    int lastUse = opened.dayThatOpens(after);
    return new Delivery(
        day,
        calendar.date(day),
        trucks,
        load,
        after - bags(come),
        lastUse,
        calendar.calendarDays(day, lastUse));
  }

  /** Bags on the first so many pallets: the last pallet may be short. */
  private long bags(long pallets) {
    return Math.min(pallets * unit, opened.all());
  }

  private long packs(long bags) {
    return packs(bags, unit);
  }

  private static long packs(long count, long each) {
    return Bags.packs(count, Math.toIntExact(each));
  }
}
