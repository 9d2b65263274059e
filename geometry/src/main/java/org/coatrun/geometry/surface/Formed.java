package org.coatrun.geometry.surface;

import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.build.BuildResult;
import org.coatrun.geometry.build.Run;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.frame.OrientedBox;
import org.coatrun.geometry.profile.Rectangle2;
import org.coatrun.geometry.solid.Box;
import org.coatrun.shared.finding.SurfaceFinding;

/** A form with what was measured on it alone, or why there is none. */
sealed interface Formed {

  /**
   * Made.
   *
   * @param volume of the steel, m³
   * @param along the smallest box that runs along it
   */
  record Made(
      Form form,
      double volume,
      double gape,
      boolean closed,
      boolean cut,
      Optional<Run> run,
      OrientedBox along,
      List<BuildResult.Note> notes,
      List<Openings.Fault> faults)
      implements Formed {

    public Made {
      notes = List.copyOf(notes);
      faults = List.copyOf(faults);
    }

    /**
     * Along the way of an uncut sweep, else from end to end. Of what has no axis, such as a plate,
     * the longest side: of the section that is swept through its thickness, or of the box.
     */
    double length() {
      Optional<Axis> axis = form.axis();
      if (axis.isEmpty()) {
        return run.map(Made::longest).orElse(longest(form.bounds()));
      }
      Optional<Double> way = cut ? Optional.empty() : run.map(Run::length);
      return way.orElse(axis.get().length());
    }

    private static double longest(Run run) {
      Rectangle2 section = run.start().bounds();
      return Math.max(run.length(), Math.max(section.width(), section.height()));
    }

    private static double longest(Box box) {
      return Math.max(
          box.maxX() - box.minX(), Math.max(box.maxY() - box.minY(), box.maxZ() - box.minZ()));
    }
  }

  /** Not made. */
  record Failed(SurfaceFinding code, String kind, String sentence) implements Formed {}
}
