package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Geometry;

/**
 * The originals of a tree, laid onto each other where they almost touch, and how they combine. The
 * only thing ever asked of it is what it fills in a plane, just behind or just in front of it.
 * Immutable; may be shared by threads, each with its own {@link Kernel}.
 */
public final class Originals {

  /** Stands for "all of the face that is asked about". */
  static final Geometry FULL = Rings.FACTORY.createPolygon();

  final Solid[] leaves;
  private final Node root;
  private final Box bounds;

  private enum Kind {
    LEAF,
    UNION,
    INTERSECTION,
    DIFFERENCE
  }

  private record Node(Kind kind, Node[] parts, int first, int last, Box box) {

    boolean holds(int leaf) {
      return leaf >= first && leaf <= last;
    }
  }

  /** A question: a plane, a side, the face's region and boxes, and whose face it is. */
  private record Question(
      Kernel kernel, Plane plane, int side, Geometry face, Box box, double[] window, int self) {}

  private Originals(Solid[] leaves, Node root) {
    this.leaves = leaves;
    this.root = root;
    this.bounds = root.box;
  }

  /** Gathers the originals and lays their faces onto each other. */
  public static Originals of(SolidTree tree, Tolerance tolerance) {
    List<Solid> leaves = new ArrayList<>();
    gather(tree, leaves);
    Solid[] table = leaves.toArray(new Solid[0]);
    laid(table, tolerance.face());
    return new Originals(table, node(tree, table, new int[1]));
  }

  /** A box that the body does not leave. */
  public Box bounds() {
    return bounds;
  }

  /** The originals in the order of the tree. */
  public List<Solid> leaves() {
    return List.of(leaves);
  }

  /**
   * The same tree with other originals in the places of some, each with the box of the one it
   * replaces.
   */
  public Originals with(Map<Integer, Solid> others) {
    Solid[] table = leaves.clone();
    others.forEach((leaf, solid) -> table[leaf] = solid);
    return new Originals(table, root);
  }

  /**
   * Whether an original of this body, moved, reaches behind a plane by more than a distance. What
   * does not can fill nothing just in front of a face in it but by touching it.
   */
  public boolean reachesBehind(Plane plane, Vec3 moved, double by) {
    double rise = plane.along(moved);
    for (Solid s : leaves) {
      double[] xyz = s.xyz;
      for (int i = 0; i < xyz.length; i += 3) {
        if (plane.height(xyz[i], xyz[i + 1], xyz[i + 2]) + rise < -by) {
          return true;
        }
      }
    }
    return false;
  }

  /** The one original that it is, where that is convex. */
  Optional<Solid> convex() {
    return root.kind == Kind.LEAF && leaves[root.first].isConvex()
        ? Optional.of(leaves[root.first])
        : Optional.empty();
  }

  /** Whether every original encloses an inside. */
  public boolean closed() {
    for (Solid s : leaves) {
      if (!s.closed()) {
        return false;
      }
    }
    return true;
  }

  /**
   * What the body fills just behind (-1) or just in front (+1) of a plane, in the plane's axes.
   *
   * @param near only what lies in this box is asked for; the rest may be missing
   * @param window the same as least u, v and greatest u, v
   */
  public Geometry fill(Kernel kernel, Plane plane, int side, Box near, double[] window) {
    return ask(root, new Question(kernel, plane, side, Overlay.EMPTY, near, window, -1));
  }

  /** The same of this body moved. */
  public Geometry fill(
      Kernel kernel, Plane plane, int side, Box near, double[] window, Vec3 moved) {
    Vec3 back = moved.times(-1);
    double u = plane.u(moved.x(), moved.y(), moved.z());
    double v = plane.v(moved.x(), moved.y(), moved.z());
    double[] there = {window[0] - u, window[1] - v, window[2] - u, window[3] - v};
    Geometry fill = fill(kernel, plane.moved(back), side, near.moved(back), there);
    return fill.isEmpty() ? fill : Rings.moved(fill, plane, moved);
  }

  /** The same about a face of original {@code self}, whose own answer is known. */
  Geometry fillAtFace(
      Kernel kernel, Plane plane, int side, Geometry face, Box box, double[] window, int self) {
    return ask(root, new Question(kernel, plane, side, face, box, window, self));
  }

  /** Whether an answer is the mark for all of the face; by identity, since the mark has no area. */
  @SuppressWarnings("ReferenceEquality") // a mark, not a value
  static boolean isFull(Geometry g) {
    return g == FULL;
  }

  private Geometry ask(Node node, Question q) {
    if (node.kind == Kind.LEAF) {
      return leaf(node, q);
    }
    if (!node.box.overlaps(q.box, q.kernel.tolerance.weld())) {
      return Overlay.EMPTY;
    }
    return switch (node.kind) {
      case UNION -> union(node, q);
      case INTERSECTION -> intersection(node, q);
      case DIFFERENCE -> difference(node, q);
      case LEAF -> throw new IllegalStateException("a leaf was answered above");
    };
  }

  private Geometry leaf(Node node, Question q) {
    if (node.first == q.self) {
      return q.side < 0 ? FULL : Overlay.EMPTY;
    }
    if (!node.box.overlaps(q.box, q.kernel.tolerance.weld())) {
      return Overlay.EMPTY;
    }
    return q.kernel.slicer.slice(leaves[node.first], q.plane, q.side, q.window);
  }

  private Geometry union(Node node, Question q) {
    Geometry sum = Overlay.EMPTY;
    for (Node part : node.parts) {
      Geometry g = ask(part, q);
      if (isFull(g)) {
        return FULL;
      }
      sum = q.kernel.overlay.sum(sum, g);
    }
    return sum;
  }

  private Geometry intersection(Node node, Question q) {
    Geometry common = FULL;
    for (Node part : node.parts) {
      Geometry g = ask(part, q);
      if (g.isEmpty() && !isFull(g)) {
        return Overlay.EMPTY;
      }
      if (!isFull(g)) {
        common = isFull(common) ? g : q.kernel.overlay.common(common, g);
      }
    }
    return common;
  }

  private Geometry difference(Node node, Question q) {
    for (int i = 1; i < node.parts.length; i++) {
      if (node.parts[i].holds(q.self) && isFull(ask(node.parts[i], q))) {
        return Overlay.EMPTY;
      }
    }
    Geometry rest = ask(node.parts[0], q);
    for (int i = 1; i < node.parts.length && (isFull(rest) || !rest.isEmpty()); i++) {
      Geometry g = ask(node.parts[i], q);
      if (isFull(g)) {
        return Overlay.EMPTY;
      }
      if (!g.isEmpty()) {
        rest = q.kernel.overlay.less(isFull(rest) ? q.face : rest, g);
      }
    }
    return rest;
  }

  private static Node node(SolidTree tree, Solid[] leaves, int[] counter) {
    int first = counter[0];
    if (tree instanceof SolidTree.Leaf) {
      counter[0]++;
      return new Node(Kind.LEAF, new Node[0], first, first, leaves[first].bounds());
    }
    List<SolidTree> parts = parts(tree);
    Node[] nodes = new Node[parts.size()];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = node(parts.get(i), leaves, counter);
    }
    Kind kind =
        tree instanceof SolidTree.Union
            ? Kind.UNION
            : tree instanceof SolidTree.Intersection ? Kind.INTERSECTION : Kind.DIFFERENCE;
    return new Node(kind, nodes, first, counter[0] - 1, box(kind, nodes));
  }

  private static Box box(Kind kind, Node[] nodes) {
    Box box = nodes[0].box;
    for (int i = 1; i < nodes.length && kind != Kind.DIFFERENCE; i++) {
      box = kind == Kind.UNION ? box.plus(nodes[i].box) : box.common(nodes[i].box);
    }
    return box;
  }

  private static List<SolidTree> parts(SolidTree tree) {
    if (tree instanceof SolidTree.Union u) {
      return u.parts();
    }
    if (tree instanceof SolidTree.Intersection i) {
      return i.parts();
    }
    SolidTree.Difference d = (SolidTree.Difference) tree;
    List<SolidTree> all = new ArrayList<>();
    all.add(d.host());
    all.addAll(d.cutters());
    return all;
  }

  private static void gather(SolidTree tree, List<Solid> leaves) {
    if (tree instanceof SolidTree.Leaf leaf) {
      leaves.add(leaf.solid());
    } else {
      for (SolidTree part : parts(tree)) {
        gather(part, leaves);
      }
    }
  }

  /** Cutter onto host, onto earlier cutters, onto host again; and the host onto huge cutters. */
  private static void laid(Solid[] leaves, double near) {
    for (int i = 1; i < leaves.length; i++) {
      boolean huge = leaves[i].bounds().diagonal() > 4 * leaves[0].bounds().diagonal();
      if (huge && leaves[i].bounds().overlaps(leaves[0].bounds(), near)) {
        leaves[0] = Snap.onto(leaves[0], leaves[i], near);
      }
      for (int j = 0; j < i; j++) {
        lay(leaves, i, j, near);
      }
      if (i > 1) {
        lay(leaves, i, 0, near);
      }
    }
  }

  private static void lay(Solid[] leaves, int moved, int target, double near) {
    if (leaves[moved].bounds().overlaps(leaves[target].bounds(), near)) {
      leaves[moved] = Snap.onto(leaves[moved], leaves[target], near);
    }
  }
}
