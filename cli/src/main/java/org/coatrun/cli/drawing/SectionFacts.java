package org.coatrun.cli.drawing;

import java.util.List;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Proof;
import org.coatrun.shared.line.RiserUse;

/** The upper part of the panel of the section: machines, risers, hardware. */
final class SectionFacts {

  private static final double[] STOPS = {0, 12, 62};

  private final DrawingJob job;
  private final Measure measure;

  SectionFacts(DrawingJob job) {
    this.job = job;
    this.measure = new Measure(job.units());
  }

  /** Writes down to a level at most. */
  void write(Panel to, double bottom, SectionAxis axis) {
    to.heading("SECTION");
    to.paragraph(Measure.format("%s; risers behind each other stand side by side.", upper(axis)));
    to.pair("Plan", proof(job.plan().proof()));
    to.pair("Standpipe", standpipe());
    machines(to, bottom);
    risers(to, bottom);
    hardware(to, bottom);
  }

  private static String upper(SectionAxis axis) {
    return "S" + axis.words().replace("looking", "een");
  }

  private String standpipe() {
    LineLimits limits = job.request().limits();
    int storeys = limits.hoseStoreys();
    return Measure.format(
        "required above %s of rise, beyond %d %s, and where hose would be longer than %s in all",
        measure.length(limits.hoseRise()),
        storeys,
        storeys == 1 ? "storey" : "storeys",
        measure.length(limits.flexible()));
  }

  private static String proof(Proof p) {
    return p.optimal()
        ? "proven best among the spots and risers looked at"
        : Measure.format("not proven best; at most %.0f %% over the best", 100 * p.gap());
  }

  private void machines(Panel to, double bottom) {
    for (MachineSpot m : job.plan().machines()) {
      if (to.linesAbove(bottom) > 3) {
        to.pair("Machine", m.name() + " on " + storey(m.floor()));
        m.needs().forEach(n -> to.pair("", n));
      }
    }
  }

  private void risers(Panel to, double bottom) {
    for (RiserUse u : job.plan().risers()) {
      if (to.linesAbove(bottom) > 3) {
        String way = u.standpipe() ? "standpipe " : "hose ";
        String from = storey(u.from()) + " to " + storey(u.to());
        to.pair("Riser", u.riser().name() + ": " + way + from + ", " + measure.length(u.rise()));
      }
    }
  }

  private void hardware(Panel to, double bottom) {
    List<Hardware> all = job.plan().hardware();
    if (all.isEmpty()) {
      return;
    }
    to.heading("HARDWARE FOR THE JOB");
    to.row(List.of("Pieces", "What", "Length each"), STOPS, true);
    int room = Math.max(0, to.linesAbove(bottom) - 1);
    int shown = all.size() <= room ? all.size() : Math.max(0, room - 1);
    all.stream().limit(shown).forEach(h -> to.row(row(h), STOPS, false));
    if (shown < all.size()) {
      to.paragraph("and " + (all.size() - shown) + " more, in the list of hardware");
    }
  }

  private List<String> row(Hardware h) {
    String size = h.size().metres() > 0 ? measure.length(h.size()) : "";
    return List.of(Measure.format("%,d", h.count()), h.item().words(), size);
  }

  private String storey(int floor) {
    return job.request().floors().get(floor).storey();
  }
}
