package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;

/**
 * Measures the surfaces of a building's steel members and decks.
 *
 * <p>Elements are measured side by side and put together in the order of their numbers, so the
 * result does not depend on the number of threads. No more solids are held than threads need.
 */
public final class SurfaceTakeoff {

  private SurfaceTakeoff() {}

  /**
   * Measures each member found to be steel, fasteners apart, and each deck. What cannot be measured
   * is unresolved with its reason.
   */
  public static Surfaces measure(Building building, SurfaceOptions options, Progress progress) {
    List<Element> elements = elements(building);
    var takeoff = new ElementTakeoff(building);
    var done = new AtomicLong();
    var jobs = new ArrayList<Callable<ElementTakeoff.Outcome>>();
    for (Element element : elements) {
      jobs.add(
          () -> {
            ElementTakeoff.Outcome outcome = takeoff.measure(element);
            progress.step(done.incrementAndGet(), elements.size());
            return outcome;
          });
    }
    var measurements = new TreeMap<ElementId, Measurement>();
    var findings = new ArrayList<Finding>();
    for (ElementTakeoff.Outcome outcome : run(jobs, options.threads())) {
      measurements.put(outcome.measurement().id(), outcome.measurement());
      findings.addAll(outcome.findings());
    }
    return new Surfaces(measurements, findings);
  }

  private static List<Element> elements(Building building) {
    var out = new ArrayList<Element>();
    for (Member m : building.members()) {
      if (m.classification().isSteel() && m.role() != Role.FASTENER) {
        out.add(m);
      }
    }
    out.addAll(building.decks());
    out.sort(Comparator.comparing(Element::id));
    return out;
  }

  private static <T> List<T> run(List<Callable<T>> jobs, int threads) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      var out = new ArrayList<T>();
      for (Future<T> f : pool.invokeAll(jobs)) {
        out.add(f.get());
      }
      return out;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("measuring was interrupted");
    } catch (ExecutionException e) {
      throw new IllegalStateException("measuring an element failed", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
