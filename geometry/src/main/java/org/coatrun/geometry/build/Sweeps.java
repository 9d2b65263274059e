package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coatrun.geometry.profile.Region;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Solids of a profile, or of one profile becoming another, carried from station to station. */
final class Sweeps {

  /** Strips for each quarter turn of an arc: six keep oblique cuts of a fillet within 2e-4. */
  static final int PER_QUARTER = 6;

  /** How the plane moves: where polygons stand, and the true way between. */
  record Way(
      List<Transform3> stations,
      List<? extends Sheet> sheets,
      boolean looped,
      boolean weld,
      double length) {}

  private Sweeps() {}

  /** The solids, one for each region. {@code volume} is the true one, or NaN for the polygons'. */
  static BuildResult.Built build(
      Profile start, Profile end, Way way, double volume, List<BuildResult.Note> notes) {
    SectionOutline a = Drawings.draw(start, notes);
    SectionOutline b = Objects.equals(start, end) ? a : Drawings.draw(end, notes);
    return build(start, a, b, way, volume, notes);
  }

  static BuildResult.Built build(
      Profile profile,
      SectionOutline a,
      SectionOutline b,
      Way way,
      double volume,
      List<BuildResult.Note> notes) {
    requirePairs(a, b);
    var solids = new ArrayList<Solid>();
    int edge = 0;
    for (int i = 0; i < a.regions().size(); i++) {
      Region region = a.regions().get(i);
      List<Loft> lofts = Loft.of(region, b.regions().get(i), PER_QUARTER);
      boolean hollow = Drawings.hollow(profile, region, way.length());
      var skin = new Skin(way.stations(), way.sheets(), way.looped(), hollow, way.weld());
      solids.add(skin.solid(lofts, edge));
      edge += lofts.stream().mapToInt(l -> l.start().pieces().size()).sum();
    }
    double flat = solids.stream().mapToDouble(Solid::volume).sum();
    double fullness = Double.isNaN(volume) || !(flat > 0) ? 1 : volume / flat;
    List<Part> parts = solids.stream().map(s -> Part.of(s, fullness)).toList();
    return new BuildResult.Built(parts, Optional.empty(), notes);
  }

  /** The result with its run. */
  static BuildResult.Built withRun(
      BuildResult.Built built,
      SectionOutline start,
      SectionOutline end,
      double length,
      Vec3 from,
      Vec3 to) {
    return new BuildResult.Built(
        built.parts(), Optional.of(new Run(start, end, length, from, to)), built.notes());
  }

  private static void requirePairs(SectionOutline a, SectionOutline b) {
    boolean pairs = a.regions().size() == b.regions().size();
    for (int i = 0; pairs && i < a.regions().size(); i++) {
      pairs = a.regions().get(i).holes().size() == b.regions().get(i).holes().size();
    }
    if (!pairs) {
      throw new NotBuildableException(
          SurfaceFinding.IMPOSSIBLE_SECTION,
          "tapered sweep",
          "The profiles at both ends of a tapered sweep differ in the number of their holes.");
    }
  }
}
