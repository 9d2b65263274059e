package org.coatrun.shared.bid.programme;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.coatrun.shared.bid.labour.LabourBill;
import org.coatrun.shared.bid.material.FloorOrder;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.units.Temperature;

/** Plans the days of a job: floors, bags, deliveries, checks, and the cold. */
public final class ProgrammePlanner {

  /** A programme longer than this, some eighty years, is not laid out day by day. */
  static final int MOST_DAYS = 20_000;

  private final Job job;
  private final WorkCalendar calendar;
  private final List<Finding> findings = new ArrayList<>();

  private ProgrammePlanner(Job job) {
    this.job = job;
    this.calendar = WorkCalendar.of(job.programme());
  }

  /**
   * The programme of a bill.
   *
   * @param temperatures by time, where the job has a record of them
   */
  public static ProgrammePlan plan(
      MaterialBill material,
      LabourBill labour,
      FloorOrder order,
      Job job,
      Optional<NavigableMap<LocalDateTime, Temperature>> temperatures) {
    return new ProgrammePlanner(job).plan(material, labour, order, temperatures);
  }

  private ProgrammePlan plan(
      MaterialBill material,
      LabourBill labour,
      FloorOrder order,
      Optional<NavigableMap<LocalDateTime, Temperature>> temperatures) {
    unknownFloors(order);
    FloorTimes times = FloorTimes.of(material, labour, job, calendar);
    boolean listed = times.workingDays() <= MOST_DAYS;
    if (!listed) {
      tooLong(times.workingDays());
    }
    long[] opened =
        times.pace().openedByDay(listed ? times.workingDays() : 0, job.labour().shift());
    DeliveryPlanner.Plan deliveries = deliveries(opened);
    List<WorkDay> days = new WorkDays(times, deliveries.deliveries(), calendar, job).of(opened);
    temperatures.ifPresent(
        record -> findings.addAll(ColdDays.of(days, record, job.cold(), job.labour().shift())));
    return new ProgrammePlan(
        times.floors(),
        days,
        deliveries.deliveries(),
        checks(times.floors()),
        times.workingDays(),
        opened.length == 0 ? 0 : opened[opened.length - 1],
        deliveries.deliveries().stream().mapToLong(Delivery::trucks).sum(),
        room(),
        findings);
  }

  private DeliveryPlanner.Plan deliveries(long[] opened) {
    DeliveryTerms terms = DeliveryTerms.of(job);
    DeliveryPlanner.Plan plan = new DeliveryPlanner(opened, terms, calendar).plan();
    findings.addAll(new DeliveryFindings(terms, calendar).of(plan));
    return plan;
  }

  private OptionalLong room() {
    DeliveryTerms terms = DeliveryTerms.of(job);
    return terms.room().isPresent()
        ? OptionalLong.of(terms.room().getAsLong() * terms.packing().bagsPerPallet())
        : OptionalLong.empty();
  }

  private List<FloorCheck> checks(List<FloorTime> floors) {
    List<String> checks = job.programme().checks();
    return floors.stream()
        .flatMap(
            floor ->
                IntStream.range(0, checks.size())
                    .mapToObj(
                        i -> new FloorCheck(floor.floor(), floor.firstDay(), i + 1, checks.get(i))))
        .toList();
  }

  private void unknownFloors(FloorOrder order) {
    order.unknown().stream()
        .map(name -> "programme.order names '" + name + "', and no floor is called that.")
        .forEach(sentence -> findings.add(Finding.of(WorkFinding.ORDER_UNKNOWN, sentence)));
  }

  private void tooLong(int days) {
    findings.add(
        Finding.of(
            WorkFinding.PROGRAMME_TOO_LONG,
            "The programme takes "
                + days
                + " working days; at most "
                + MOST_DAYS
                + " are listed."));
  }
}
