package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Solids between profiles that stand one behind the other: ruled from each to the next. */
final class SectionedSolids {

  private SectionedSolids() {}

  static BuildResult.Built build(Shape.Sectioned s, Transform3 at) {
    if (s.stations().size() < 2) {
      throw NotBuildableException.empty("sectioned solid");
    }
    var notes = new ArrayList<BuildResult.Note>();
    var spans = new ArrayList<SolidTree>();
    double length = 0;
    for (int i = 1; i < s.stations().size(); i++) {
      Shape.Station a = s.stations().get(i - 1);
      Shape.Station b = s.stations().get(i);
      Transform3 from = at.after(a.position());
      Transform3 to = at.after(b.position());
      double span = from.origin().distance(to.origin());
      if (span > 0) {
        var way =
            new Sweeps.Way(
                List.of(from, to), List.of(new RuledSheet(from, to)), false, false, span);
        var built = Sweeps.build(a.profile(), b.profile(), way, Double.NaN, notes);
        built.parts().forEach(p -> spans.add(p.tree()));
        length += span;
      }
    }
    if (spans.isEmpty()) {
      throw NotBuildableException.empty("sectioned solid");
    }
    SolidTree whole = spans.size() == 1 ? spans.get(0) : new SolidTree.Union(spans);
    return withRun(s, at, whole, length, notes);
  }

  private static BuildResult.Built withRun(
      Shape.Sectioned s,
      Transform3 at,
      SolidTree whole,
      double length,
      List<BuildResult.Note> notes) {
    Shape.Station first = s.stations().get(0);
    Shape.Station last = s.stations().get(s.stations().size() - 1);
    var ignored = new ArrayList<BuildResult.Note>();
    SectionOutline a = seen(first, at, ignored);
    SectionOutline b = first.profile().equals(last.profile()) ? a : seen(last, at, ignored);
    Vec3 from = at.apply(first.position().origin());
    Vec3 to = at.apply(last.position().origin());
    var built =
        new BuildResult.Built(List.of(new Part(whole, 1)), java.util.Optional.empty(), notes);
    return Sweeps.withRun(built, a, b, length, from, to);
  }

  private static SectionOutline seen(
      Shape.Station station, Transform3 at, List<BuildResult.Note> notes) {
    Transform3 place = at.after(station.position());
    return Drawings.seenAlong(
        Drawings.draw(station.profile(), notes), place, place.x().cross(place.y()));
  }
}
