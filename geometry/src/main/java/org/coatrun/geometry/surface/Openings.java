package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.exposure.BodyTree;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Opening;

/**
 * The openings of a body, taken out of it.
 *
 * @param tree the body less its openings
 * @param cuts which originals of the tree come from which opening
 * @param unbuilt openings that could not be built
 */
record Openings(SolidTree tree, List<Cut> cuts, List<Fault> unbuilt) {

  /**
   * An opening that has no effect.
   *
   * @param opening its place in the order of the openings
   * @param words what to say after its name
   */
  record Fault(int opening, SurfaceFinding code, String words) {}

  /** An opening and the numbers of its originals, from the first to before the last. */
  record Cut(int opening, int first, int end, Box box) {}

  /**
   * @param openings in the order of their numbers
   * @param placed the same in the axes of the form
   */
  static Openings of(SolidTree host, List<Opening> openings, List<Likeness.Hole> placed) {
    SolidTree tree = host;
    int leaves = leaves(host);
    var cuts = new ArrayList<Cut>();
    var faults = new ArrayList<Fault>();
    for (int i = 0; i < openings.size(); i++) {
      BodyTree.Result r = BodyTree.of(openings.get(i).body().shape(), placed.get(i).placed());
      if (r instanceof BodyTree.Result.Made m) {
        tree = SolidTree.less(tree, m.tree());
        int more = leaves(m.tree());
        cuts.add(new Cut(i, leaves, leaves + more, m.tree().bounds()));
        leaves += more;
      } else {
        faults.add(new Fault(i, SurfaceFinding.NOT_MEASURED, "could not be built and is not cut."));
      }
    }
    return new Openings(tree, List.copyOf(cuts), List.copyOf(faults));
  }

  /**
   * Openings that leave no face on the body's surface: they stand beside it, or in what others have
   * cut already.
   */
  List<Fault> idle(Originals originals, Boundary surface) {
    var working = new boolean[originals.leaves().size()];
    for (Patch p : surface.patches()) {
      working[p.leaf()] = true;
    }
    var out = new ArrayList<Fault>();
    for (Cut cut : cuts) {
      if (!works(cut, working) && !swallows(cut, originals)) {
        out.add(new Fault(cut.opening(), SurfaceFinding.IDLE_OPENING, "cuts nothing of it."));
      }
    }
    return out;
  }

  private static boolean works(Cut cut, boolean[] working) {
    for (int i = cut.first(); i < cut.end(); i++) {
      if (working[i]) {
        return true;
      }
    }
    return false;
  }

  /** Whether a whole part of the body may have gone, which leaves no face either. */
  private static boolean swallows(Cut cut, Originals originals) {
    Box b = cut.box().grown(1e-6);
    return originals.leaves().stream()
        .limit(cut.first())
        .map(s -> s.bounds())
        .anyMatch(o -> b.plus(o).equals(b));
  }

  private static int leaves(SolidTree tree) {
    if (tree instanceof SolidTree.Union u) {
      return u.parts().stream().mapToInt(Openings::leaves).sum();
    }
    if (tree instanceof SolidTree.Intersection i) {
      return i.parts().stream().mapToInt(Openings::leaves).sum();
    }
    if (tree instanceof SolidTree.Difference d) {
      return leaves(d.host()) + d.cutters().stream().mapToInt(Openings::leaves).sum();
    }
    return 1;
  }
}
