package org.coatrun.shared.bid.amounts;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.inspection.InspectionPlan;
import org.coatrun.shared.bid.inspection.InspectionPlanner;
import org.coatrun.shared.bid.labour.LabourBill;
import org.coatrun.shared.bid.material.FloorOrder;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.bid.material.MaterialOrder;
import org.coatrun.shared.bid.material.WorkFloor;
import org.coatrun.shared.bid.programme.ProgrammePlan;
import org.coatrun.shared.bid.programme.ProgrammePlanner;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.units.Temperature;

/**
 * All amounts of a bid, from thickness to money.
 *
 * @param order the material of the whole job in bags
 * @param alternates in the order of the job
 * @param findings sorted, each once; those of alternates are not among them
 * @param basis what the amounts go by
 */
public record BidAmounts(
    MaterialBill material,
    MaterialOrder order,
    LabourBill labour,
    CostSheet money,
    ProgrammePlan programme,
    InspectionPlan inspection,
    List<AlternateAmounts> alternates,
    List<Finding> findings,
    List<BasisLine> basis) {

  public BidAmounts {
    alternates = List.copyOf(alternates);
    findings = findings.stream().distinct().sorted().toList();
    basis = List.copyOf(basis);
  }

  /**
   * The amounts of rated lines, without alternates.
   *
   * @param floors of the building; working floors of lines that are not among them are added
   * @param temperatures by time, where the job has a record of them
   */
  public static BidAmounts of(
      Collection<RatedLine> lines,
      Job job,
      Collection<WorkFloor> floors,
      Optional<NavigableMap<LocalDateTime, Temperature>> temperatures) {
    FloorOrder order = FloorOrder.of(job.programme().order(), floors, lines);
    MaterialBill material = MaterialBill.of(lines, job, order);
    MaterialOrder bags = MaterialOrder.of(material.total(), job.material());
    LabourBill labour = LabourBill.of(material, job);
    ProgrammePlan programme = ProgrammePlanner.plan(material, labour, order, job, temperatures);
    CostSheet money =
        CostSheet.of(bags, labour, programme, material.elementsWithoutThickness(), job);
    InspectionPlan inspection = InspectionPlanner.plan(material, job);
    List<Finding> findings = new ArrayList<>(AmountFindings.of(material, labour));
    findings.addAll(money.findings());
    findings.addAll(programme.findings());
    return new BidAmounts(
        material,
        bags,
        labour,
        money,
        programme,
        inspection,
        List.of(),
        findings,
        AmountBasis.of(job, material.total(), inspection, temperatures.isPresent()));
  }

  /**
   * The amounts of a job with its alternates side by side.
   *
   * @param lines of the building, rated by the job
   * @param rate gives them as another job rates them; asked by several threads
   */
  public static BidAmounts of(
      Collection<RatedLine> lines,
      Function<Job, ? extends Collection<RatedLine>> rate,
      Job job,
      Collection<WorkFloor> floors,
      Optional<NavigableMap<LocalDateTime, Temperature>> temperatures) {
    List<Job> jobs = new ArrayList<>(List.of(job));
    job.alternates().forEach(other -> jobs.add(Change.of(job, other)));
    List<BidAmounts> all =
        IntStream.range(0, jobs.size())
            .parallel()
            .mapToObj(
                i ->
                    of(i == 0 ? lines : rate.apply(jobs.get(i)), jobs.get(i), floors, temperatures))
            .toList();
    BidAmounts base = all.get(0);
    List<AlternateAmounts> others =
        IntStream.range(0, job.alternates().size())
            .mapToObj(i -> Comparison.of(job.alternates().get(i), base, all.get(i + 1)))
            .toList();
    return base.with(others);
  }

  private BidAmounts with(List<AlternateAmounts> others) {
    return new BidAmounts(
        material, order, labour, money, programme, inspection, others, findings, basis);
  }
}
