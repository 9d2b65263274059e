package org.coatrun.shared.bid.programme;

import java.util.OptionalLong;
import org.coatrun.shared.bid.material.Packing;
import org.coatrun.shared.job.Job;

/**
 * What deliveries go by.
 *
 * @param room pallets that the storage room takes; empty where there is no limit
 * @param leadDays working days from a delivery to the first of its bags used
 * @param trucksPerDay that can be unloaded
 * @param shelfLife calendar days that bags keep
 */
record DeliveryTerms(
    Packing packing, OptionalLong room, int leadDays, int trucksPerDay, int shelfLife) {

  static DeliveryTerms of(Job job) {
    return new DeliveryTerms(
        Packing.of(job.material()),
        job.programme().storage().isPresent()
            ? OptionalLong.of(Packing.room(job.programme().storage().orElseThrow(), job.material()))
            : OptionalLong.empty(),
        job.programme().leadTime(),
        job.programme().trucksPerDay(),
        job.material().shelfLife());
  }

  /** With a lead time trucks unload when the day's work is done, without one before it begins. */
  boolean inTheEvening() {
    return leadDays > 0;
  }

  /** The working day whose morning first finds what trucks bring on {@code day}. */
  int morningAfter(int day) {
    return inTheEvening() ? day + 1 : day;
  }

  /** The first working day that may open what trucks bring on {@code day}. */
  int firstUse(int day) {
    return day + leadDays;
  }

  long palletsPerDay() {
    return (long) packing.palletsPerTruck() * trucksPerDay;
  }
}
