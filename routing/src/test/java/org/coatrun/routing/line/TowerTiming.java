package org.coatrun.routing.line;

import java.lang.management.ManagementFactory;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Route;

/**
 * Prints how long towers of 50 by 50 m take, by the clock and on the processor, which others may
 * share; run by hand, not a test.
 */
final class TowerTiming {

  private TowerTiming() {}

  public static void main(String[] args) {
    for (int storeys : new int[] {5, 10, 20, 40, 40}) {
      Towers tower = Towers.of(storeys, 4, 50, 9);
      long start = System.nanoTime();
      long busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      LinePlan plan = LinePlanner.plan(LineRequest.of(tower.floors(), tower.work()));
      long reached = plan.routes().stream().filter(Route.class::isInstance).count();
      System.out.printf(
          "%d storeys, %d places, %d reached: %.2f s, %.2f s on the processor; cost %.0f, bound"
              + " %.0f, %d nodes, optimal %b%n",
          storeys,
          plan.cells().size(),
          reached,
          (System.nanoTime() - start) / 1e9,
          (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - busy) / 1e9,
          plan.proof().cost(),
          plan.proof().bound(),
          plan.proof().nodes(),
          plan.proof().optimal());
    }
  }
}
