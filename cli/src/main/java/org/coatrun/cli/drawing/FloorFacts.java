package org.coatrun.cli.drawing;

import java.util.List;
import java.util.stream.Collectors;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** The upper part of the panel of a plan: the floor's check and its set-ups. */
final class FloorFacts {

  private static final int MOST_FANS = 3;
  private static final int MOST_MISSES = 3;
  private static final double[] STOPS = {0, 8, 33, 50, 67};

  private final DrawingJob job;
  private final FloorPlan floor;
  private final Measure measure;

  FloorFacts(DrawingJob job, FloorPlan floor) {
    this.job = job;
    this.floor = floor;
    this.measure = new Measure(job.units());
  }

  /** Writes down to a level at most; set-ups that find no room are counted. */
  void write(Panel to, double bottom) {
    to.heading("THIS FLOOR");
    to.pair("Elevation", measure.elevation(floor.outline().elevation()));
    to.pair("Work", work());
    floor.check().ifPresent(c -> check(to, c));
    misses(to);
    setUps(to, bottom);
  }

  private String work() {
    if (floor.cells().isEmpty()) {
      return "nothing is sprayed from this floor";
    }
    double sum =
        floor.cells().stream()
            .mapToDouble(c -> job.plan().cells().get(c).coating().cubicMetres())
            .sum();
    int n = floor.cells().size();
    return n + (n == 1 ? " place, " : " places, ") + measure.coating(Volume.ofCubicMetres(sum));
  }

  private void check(Panel to, FloorCheck c) {
    String storeys = c.storeys() == 1 ? "1 storey" : c.storeys() + " storeys";
    String rise = c.rise().metres() < 0 ? "down " : "";
    Length size = Length.ofMetres(Math.abs(c.rise().metres()));
    to.pair("Rise", c.storeys() == 0 ? "none" : rise + measure.length(size) + ", " + storeys);
    Length allowed = job.request().limits().flexible();
    to.pair("Hose, at most", measure.length(c.flexible()) + " of " + measure.length(allowed));
    to.pair("Whip, within it", measure.length(job.request().limits().whip()));
    to.pair("Pipe, at most", c.pipe().metres() > 0 ? measure.length(c.pipe()) : "none");
    to.pair("Bends, at most", String.valueOf(c.bends()));
    to.pair("Standpipe", standpipe(c));
    to.pair("Water at pump", measure.pressure(c.waterAtPump()) + booster(c));
    c.feederDrop().ifPresent(d -> to.pair("Feeder drop", Measure.format("%.1f %%", d)));
    to.pair("Air until cured", air(c.fans()));
    c.notes().forEach(n -> to.pair("Note", n));
  }

  private static String standpipe(FloorCheck c) {
    if (!c.standpipe().isEmpty()) {
      return "required: " + String.join("; ", c.standpipe());
    }
    return c.pipe().metres() > 0 ? "not required, laid for less hose" : "not required";
  }

  private static String booster(FloorCheck c) {
    return c.booster().map(b -> b ? "; booster pump and tank" : "; supply is enough").orElse("");
  }

  private String air(List<FloorCheck.Fan> fans) {
    String some =
        fans.stream()
            .limit(MOST_FANS)
            .map(f -> Panel.cut(f.space(), 34, Panel.SIZE) + " " + measure.air(f.air()))
            .collect(Collectors.joining("; "));
    return fans.size() > MOST_FANS ? some + "; " + (fans.size() - MOST_FANS) + " more" : some;
  }

  private void misses(Panel to) {
    List<NoRoute> none =
        floor.cells().stream()
            .map(c -> job.plan().routes().get(c))
            .filter(NoRoute.class::isInstance)
            .map(NoRoute.class::cast)
            .toList();
    if (none.isEmpty()) {
      return;
    }
    to.heading("NOT REACHED: " + none.size() + (none.size() == 1 ? " PLACE" : " PLACES"));
    List<String> why = none.stream().map(NoRoute::sentence).distinct().toList();
    why.stream().limit(MOST_MISSES).forEach(to::paragraph);
    if (why.size() > MOST_MISSES) {
      to.paragraph("and " + (why.size() - MOST_MISSES) + " more reasons, in the findings");
    }
  }

  private void setUps(Panel to, double bottom) {
    if (floor.setUps().isEmpty()) {
      return;
    }
    to.heading("SET-UPS, IN ORDER");
    to.row(List.of("No.", "From", "Hose", "Hose in all", "Coating"), STOPS, true);
    int room = Math.max(0, to.linesAbove(bottom) - 1);
    int all = floor.setUps().size();
    int shown = all <= room ? all : Math.max(0, room - 1);
    floor.setUps().stream().limit(shown).forEach(s -> to.row(row(s), STOPS, false));
    if (shown < all) {
      to.paragraph("and " + (all - shown) + " more, in the list of set-ups");
    }
  }

  private List<String> row(SetUp s) {
    return List.of(
        String.valueOf(s.number()),
        s.riser().orElse(s.machine()),
        measure.length(s.hose()),
        measure.length(s.flexible()),
        measure.coating(s.coating()));
  }
}
