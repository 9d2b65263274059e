package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.frame.FrameBuilder;
import org.coatrun.geometry.frame.FrameOptions;
import org.coatrun.geometry.frame.FramePiece;
import org.coatrun.geometry.view.Drawing;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.surface.Extent;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.surface.Surfaces;

/**
 * Measures the surfaces of a building's steel members and decks, and what covers them.
 *
 * <p>First every body is made with its openings taken out, then each is measured among its
 * neighbours. Results are put together in the order of the elements' numbers, so they do not depend
 * on the number of threads.
 */
public final class SurfaceTakeoff {

  private SurfaceTakeoff() {}

  /**
   * Measures each member found to be steel, fasteners apart, and each deck. What cannot be measured
   * is unresolved with its reason.
   */
  public static Surfaces measure(Building building, SurfaceOptions options, Progress progress) {
    Subjects subjects = Subjects.of(building);
    try (Crew crew = new Crew(options.threads())) {
      return measure(building, subjects, options, progress, crew);
    }
  }

  private static Surfaces measure(
      Building building, Subjects subjects, SurfaceOptions options, Progress progress, Crew crew) {
    int total = subjects.measured().size();
    var all = new ArrayList<Element>(subjects.measured());
    all.addAll(subjects.covering());
    Things.Result[] made = new Things.Result[all.size()];
    var things = new Things(options.exposure().holeMouth().squareMetres());
    crew.each(
        all.size(),
        kernel -> i -> made[i] = things.of(all.get(i), subjects.openingsOf(all.get(i)), kernel));
    Future<Frame> frame = crew.begin(() -> frame(made));
    Future<List<Standing>> standings = crew.begin(() -> Places.of(building, made));
    Future<Map<ElementId, Extent>> extents = crew.begin(() -> extents(made, total));
    Neighbours neighbours =
        new Neighbours(bodies(made), 4 * options.exposure().contactGap().metres());
    var takeoff = new ElementTakeoff(building, options);
    ElementTakeoff.Outcome[] outcomes = new ElementTakeoff.Outcome[total];
    var done = new AtomicInteger();
    crew.each(
        total,
        kernel ->
            i -> {
              outcomes[i] = takeoff.measure(made[i], neighbours, kernel);
              progress.step(done.incrementAndGet(), total);
            });
    options
        .meshes()
        .ifPresent(
            sink -> {
              covering(made, total, sink);
              standing(subjects, things, crew, sink);
            });
    return gathered(outcomes, Crew.result(frame), Crew.result(standings), Crew.result(extents));
  }

  private static List<Thing> bodies(Things.Result[] made) {
    var out = new ArrayList<Thing>();
    for (Things.Result r : made) {
      if (r instanceof Things.Result.Made m) {
        out.add(m.thing());
      }
    }
    return out;
  }

  private static void covering(Things.Result[] made, int from, Consumer<ElementMesh> sink) {
    for (int i = from; i < made.length; i++) {
      draw(made[i], sink);
    }
  }

  /** These take no part in what is measured, and are made for the picture alone. */
  private static void standing(
      Subjects subjects, Things things, Crew crew, Consumer<ElementMesh> sink) {
    List<Element> all = subjects.standing();
    crew.each(
        all.size(),
        kernel -> i -> draw(things.of(all.get(i), subjects.openingsOf(all.get(i)), kernel), sink));
  }

  private static void draw(Things.Result made, Consumer<ElementMesh> sink) {
    if (made instanceof Things.Result.Made m) {
      sink.accept(m.mesh(Drawing.of(m.thing().form())));
    }
  }

  private static Frame frame(Things.Result[] made) {
    var pieces = new ArrayList<FramePiece>();
    for (Things.Result r : made) {
      if (r instanceof Things.Result.Made m
          && m.element() instanceof Member member
          && member.classification().isSteel()) {
        pieces.add(FramePiece.of(member, m.thing(), m.formed().along()));
      }
    }
    return new FrameBuilder(FrameOptions.defaults()).build(pieces);
  }

  private static Map<ElementId, Extent> extents(Things.Result[] made, int measured) {
    var extents = new LinkedHashMap<ElementId, Extent>();
    for (int i = 0; i < measured; i++) {
      if (made[i] instanceof Things.Result.Made m) {
        extents.put(m.element().id(), FramePiece.extent(m.thing(), m.formed().along()));
      }
    }
    return extents;
  }

  private static Surfaces gathered(
      ElementTakeoff.Outcome[] outcomes,
      Frame frame,
      List<Standing> standings,
      Map<ElementId, Extent> extents) {
    var measurements = new LinkedHashMap<ElementId, Measurement>();
    var findings = new ArrayList<Finding>();
    for (ElementTakeoff.Outcome outcome : outcomes) {
      measurements.put(outcome.measurement().id(), outcome.measurement());
      findings.addAll(outcome.findings());
    }
    var places = new LinkedHashMap<ElementId, Standing>();
    standings.forEach(s -> places.put(s.id(), s));
    return new Surfaces(measurements, findings, frame, places, extents);
  }
}
