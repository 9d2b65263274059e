package org.coatrun.geometry.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds holes that are drawn in a solid itself, as inner rings of its faces with walls between
 * them, and fills the small ones.
 *
 * <p>A hole has two mouths or more, each an inner ring, and walls that touch nothing but mouths.
 * The bore of a tube is none: it takes a fifth or more of the face about it and is at least half as
 * long as it is wide.
 */
public final class DrawnHoles {

  private static final double HOLLOW_SHARE = 0.2;
  private static final double HOLLOW_LENGTH = 0.5;

  /** An inner ring: of which face, and its number there. */
  private record Mouth(int face, int loop) {}

  private final Solid solid;
  private final double most;
  private final Map<Long, Integer> faceAt = new HashMap<>();
  private final Map<Long, Mouth> mouthAt = new HashMap<>();
  private final Set<Integer> walls = new HashSet<>();
  private final Set<Mouth> filled = new HashSet<>();

  private DrawnHoles(Solid solid, double most) {
    this.solid = solid;
    this.most = most;
  }

  /**
   * The solid without its small holes; the same one where it has none.
   *
   * @param most mouths smaller than this are filled, m²
   */
  public static Solid filled(Solid solid, double most) {
    boolean any = false;
    for (Face f : solid.faces) {
      any |= f.loops.length > 1;
    }
    return any && solid.closed() ? new DrawnHoles(solid, most).filled() : solid;
  }

  private Solid filled() {
    List<Mouth> mouths = mouths();
    if (mouths.isEmpty()) {
      return solid;
    }
    index();
    Set<Mouth> seen = new HashSet<>();
    for (Mouth m : mouths) {
      if (seen.add(m)) {
        hole(m, seen);
      }
    }
    return filled.isEmpty() ? solid : rebuilt();
  }

  /** The inner rings but for those of hollow sections, whose walls are inner sides. */
  private List<Mouth> mouths() {
    BitSet hollow = new BitSet();
    for (Face f : solid.faces) {
      if (f.label().kind() == FaceLabel.Kind.INNER_SIDE) {
        for (int[] ring : f.loops) {
          Arrays.stream(ring).forEach(hollow::set);
        }
      }
    }
    List<Mouth> mouths = new ArrayList<>();
    for (int f = 0; f < solid.faces.length; f++) {
      int[][] loops = solid.faces[f].loops;
      for (int k = 1; k < loops.length; k++) {
        if (!Arrays.stream(loops[k]).allMatch(hollow::get)) {
          mouths.add(new Mouth(f, k));
        }
      }
    }
    return mouths;
  }

  private void index() {
    for (int f = 0; f < solid.faces.length; f++) {
      int[][] loops = solid.faces[f].loops;
      for (int k = 0; k < loops.length; k++) {
        for (int i = 0; i < loops[k].length; i++) {
          long edge = edge(loops[k][i], loops[k][(i + 1) % loops[k].length]);
          faceAt.put(edge, f);
          if (k > 0) {
            mouthAt.put(edge, new Mouth(f, k));
          }
        }
      }
    }
  }

  /** From one mouth along the walls to the others. */
  private void hole(Mouth from, Set<Mouth> seen) {
    Set<Integer> reached = new HashSet<>();
    Set<Mouth> mouths = new HashSet<>();
    mouths.add(from);
    ArrayDeque<Integer> open = new ArrayDeque<>();
    beyond(ring(from), reached, open);
    while (!open.isEmpty()) {
      for (int[] ring : solid.faces[open.remove()].loops) {
        for (int i = 0; i < ring.length; i++) {
          long across = edge(ring[(i + 1) % ring.length], ring[i]);
          Mouth mouth = mouthAt.get(across);
          Integer next = faceAt.get(across);
          if (mouth != null) {
            mouths.add(mouth);
          } else if (next != null && reached.add(next)) {
            open.add(next);
          }
        }
      }
    }
    seen.addAll(mouths);
    if (mouths.size() > 1 && isSmall(mouths, reached) && !isBore(mouths)) {
      walls.addAll(reached);
      filled.addAll(mouths);
    }
  }

  private void beyond(int[] ring, Set<Integer> reached, ArrayDeque<Integer> open) {
    for (int i = 0; i < ring.length; i++) {
      Integer next = faceAt.get(edge(ring[(i + 1) % ring.length], ring[i]));
      if (next != null && reached.add(next)) {
        open.add(next);
      }
    }
  }

  private boolean isSmall(Set<Mouth> mouths, Set<Integer> reached) {
    for (Mouth m : mouths) {
      if (reached.contains(m.face()) || area(m) >= most) {
        return false;
      }
    }
    for (int f : reached) {
      if (solid.faces[f].label().kind() == FaceLabel.Kind.INNER_SIDE) {
        return false;
      }
    }
    return true;
  }

  private boolean isBore(Set<Mouth> mouths) {
    double deepest = 0;
    double widest = 0;
    double share = 0;
    for (Mouth m : mouths) {
      Face f = solid.faces[m.face()];
      double outer = Solids.face(solid.xyz, new int[][] {f.loops[0]}, f.label(), 1).flatArea();
      share = Math.max(share, area(m) / outer);
      widest = Math.max(widest, 2 * Math.sqrt(area(m) / Math.PI));
      for (Mouth o : mouths) {
        deepest = Math.max(deepest, apart(m, o));
      }
    }
    return share >= HOLLOW_SHARE && deepest >= HOLLOW_LENGTH * widest;
  }

  private double apart(Mouth a, Mouth b) {
    double[] p = middle(ring(a));
    double[] q = middle(ring(b));
    return Math.sqrt(
        (p[0] - q[0]) * (p[0] - q[0])
            + (p[1] - q[1]) * (p[1] - q[1])
            + (p[2] - q[2]) * (p[2] - q[2]));
  }

  private double[] middle(int[] ring) {
    double[] c = new double[3];
    for (int v : ring) {
      c[0] += solid.x(v) / ring.length;
      c[1] += solid.y(v) / ring.length;
      c[2] += solid.z(v) / ring.length;
    }
    return c;
  }

  private int[] ring(Mouth m) {
    return solid.faces[m.face()].loops[m.loop()];
  }

  private double area(Mouth m) {
    Face face = Solids.face(solid.xyz, new int[][] {ring(m)}, FaceLabel.MESH, 1);
    return face == null ? 0 : face.flatArea();
  }

  private Solid rebuilt() {
    List<Face> kept = new ArrayList<>();
    for (int f = 0; f < solid.faces.length; f++) {
      if (!walls.contains(f)) {
        kept.add(without(f));
      }
    }
    return Solids.finish(solid.xyz, kept.toArray(new Face[0]));
  }

  private Face without(int f) {
    Face face = solid.faces[f];
    List<int[]> loops = new ArrayList<>();
    for (int k = 0; k < face.loops.length; k++) {
      if (!filled.contains(new Mouth(f, k))) {
        loops.add(face.loops[k]);
      }
    }
    if (loops.size() == face.loops.length) {
      return face;
    }
    // below one it is the chords of round holes that make the flat face too large
    double stretch = face.stretch() < 1 && loops.size() == 1 ? 1 : face.stretch();
    return Solids.face(solid.xyz, loops.toArray(new int[0][]), face.label(), stretch);
  }

  private static long edge(int from, int to) {
    return (long) from << 32 | to;
  }
}
