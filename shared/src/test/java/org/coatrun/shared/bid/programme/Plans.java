package org.coatrun.shared.bid.programme;

import java.time.LocalDateTime;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.labour.LabourBill;
import org.coatrun.shared.bid.material.FloorOrder;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.units.Temperature;

/** Programmes of lines, by the text of a job. */
final class Plans {

  private Plans() {}

  static ProgrammePlan of(
      String text,
      List<RatedLine> lines,
      Optional<NavigableMap<LocalDateTime, Temperature>> temperatures) {
    Job job = Job.parse("job.yaml", text);
    FloorOrder order = FloorOrder.of(job.programme().order(), List.of(), lines);
    MaterialBill material = MaterialBill.of(lines, job, order);
    LabourBill labour = LabourBill.of(material, job);
    return ProgrammePlanner.plan(material, labour, order, job, temperatures);
  }
}
