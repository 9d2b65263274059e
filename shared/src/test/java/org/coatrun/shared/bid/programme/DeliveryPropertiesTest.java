package org.coatrun.shared.bid.programme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.material.Packing;
import org.coatrun.shared.job.Job;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of the deliveries of any job. */
class DeliveryPropertiesTest {

  private static final int JOBS = 80;
  private static final Map<Long, Case> MADE = new HashMap<>();

  static LongStream seeds() {
    return LongStream.range(0, JOBS);
  }

  /** A job with its plan. */
  private record Case(
      Job job,
      ProgrammePlan plan,
      NavigableMap<Integer, Long> opened,
      NavigableMap<Integer, Long> come) {

    /** Made once for all properties. */
    static Case of(long seed) {
      return MADE.computeIfAbsent(seed, Case::make);
    }

    static Case make(long seed) {
      String text = job(new Random(seed));
      List<RatedLine> lines = Rated.random(seed, 10 + (int) (seed % 5) * 25);
      ProgrammePlan plan = Plans.of(text, lines, Optional.empty());
      NavigableMap<Integer, Long> opened = new TreeMap<>();
      plan.days().forEach(d -> opened.put(d.day(), last(opened) + d.bags()));
      NavigableMap<Integer, Long> come = new TreeMap<>();
      plan.deliveries().forEach(d -> come.put(d.day(), last(come) + d.bags()));
      return new Case(Job.parse("job.yaml", text), plan, opened, come);
    }

    private static long last(NavigableMap<Integer, Long> sums) {
      return sums.isEmpty() ? 0 : sums.lastEntry().getValue();
    }

    private static String job(Random random) {
      return String.format(
          Locale.ROOT,
          """
          material: {bags-per-pallet: %d, pallet-area: %d ft2, pallets-high: %d,
                     truckload: %d lb, shelf-life: %d days}
          machine: {rate: %d bags/h, machines: %d}
          labour: {shift: %d h, per-floor: %d h}
          programme: {start: 2026-0%d-0%d, lead-time: %d days, trucks-per-day: %d%s}
          """,
          1 + random.nextInt(60),
          10 + random.nextInt(20),
          1 + random.nextInt(3),
          500 + random.nextInt(40_000),
          1 + random.nextInt(random.nextBoolean() ? 8 : 200),
          1 + random.nextInt(40),
          1 + random.nextInt(3),
          4 + random.nextInt(12),
          random.nextInt(20),
          1 + random.nextInt(9),
          1 + random.nextInt(9),
          random.nextInt(6),
          1 + random.nextInt(3),
          random.nextInt(3) == 0 ? "" : ", storage: " + (1 + random.nextInt(600)) + " ft2");
    }

    boolean has(String code) {
      return plan.findings().stream().anyMatch(f -> f.code().code().equals(code));
    }

    long openedBy(int day) {
      return opened.headMap(day, true).isEmpty() ? 0 : opened.floorEntry(day).getValue();
    }

    long comeBy(int day) {
      return come.headMap(day, true).isEmpty() ? 0 : come.floorEntry(day).getValue();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nobodyWaitsForBagsAndAllThatComesIsUsed(long seed) {
    Case c = Case.of(seed);
    int lead = c.job().programme().leadTime();
    for (WorkDay day : c.plan().days()) {
      assertThat(c.comeBy(day.day() - lead)).isGreaterThanOrEqualTo(c.openedBy(day.day()));
      assertThat(day.stock()).isNotNegative();
      assertThat(day.stock()).isEqualTo(c.comeBy(day.day()) - c.openedBy(day.day()));
    }
    assertThat(c.comeBy(Integer.MAX_VALUE)).isEqualTo(c.plan().bags());
    assertThat(c.openedBy(Integer.MAX_VALUE)).isEqualTo(c.plan().bags());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theRoomIsNeverOverfullUnlessTheFindingSaysSo(long seed) {
    Case c = Case.of(seed);
    if (c.plan().room().isEmpty()) {
      assertThat(c.has("F416")).isFalse();
      return;
    }
    boolean evening = c.job().programme().leadTime() > 0;
    boolean overfull =
        c.plan().deliveries().stream()
            .anyMatch(
                d ->
                    c.comeBy(d.day()) - c.openedBy(evening ? d.day() : d.day() - 1)
                        > c.plan().room().getAsLong());
    assertThat(overfull && !c.has("F416")).isFalse();
  }

  /**
   * Told apart from the plan: whatever must be there by a day less what was opened is the least
   * that any plan has in the room, were trucks without limit. A room that takes this and a pallet
   * for rounding at either end, with trucks enough, is never called too small.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void aRoomThatIsLargeEnoughIsNotCalledTooSmall(long seed) {
    Case c = Case.of(seed);
    Packing packing = Packing.of(c.job().material());
    int lead = c.job().programme().leadTime();
    long most = 0;
    for (int day = -lead; day <= c.plan().workingDays(); day++) {
      long opened = c.openedBy(lead > 0 ? day : day - 1);
      most = Math.max(most, c.openedBy(day + lead) - opened);
    }
    boolean trucksEnough =
        c.plan().mostBagsInADay() + packing.bagsPerPallet()
            <= (long) packing.bagsPerTruck() * c.job().programme().trucksPerDay();
    long asked = most + 2L * packing.bagsPerPallet();
    if (trucksEnough && c.plan().room().orElse(Long.MAX_VALUE) >= asked) {
      assertThat(c.has("F416")).isFalse();
    }
    if (c.plan().room().orElse(Long.MAX_VALUE) < most) {
      assertThat(c.has("F416")).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void bagsAreFreshUnlessTheFindingSaysSo(long seed) {
    Case c = Case.of(seed);
    boolean old =
        c.plan().deliveries().stream().anyMatch(d -> d.keptDays() > c.job().material().shelfLife());
    assertThat(c.has("F417")).isEqualTo(old);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void trucksKeepToTheirLimits(long seed) {
    Case c = Case.of(seed);
    Packing packing = Packing.of(c.job().material());
    int last = Integer.MIN_VALUE;
    for (Delivery d : c.plan().deliveries()) {
      assertThat(d.day()).isGreaterThan(last);
      assertThat(d.trucks()).isBetween(1, c.job().programme().trucksPerDay());
      assertThat(d.bags()).isBetween(1L, (long) d.trucks() * packing.bagsPerTruck());
      last = d.day();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theSameJobGivesTheSamePlan(long seed) {
    assertThat(Case.make(seed).plan()).isEqualTo(Case.of(seed).plan());
  }
}
