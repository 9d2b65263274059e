package org.coatrun.geometry.exposure;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Face;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Solid;

/**
 * What a body is, wherever it stands: its axes are the world's, its origin is a point of its own.
 * Bodies that are alike and turned alike share one; two that were made apart are never equal.
 */
public final class Form {

  private final Originals originals;
  private final Boundary boundary;
  private final double holes;
  private final Optional<Axis> axis;
  private final boolean soffitOnly;
  private final Originals envelope;
  private volatile Uses uses;

  /**
   * @param originals what it is made of, holes under the threshold left out
   * @param boundary its surface
   * @param holes what the small holes left out add to the surface: their walls less their mouths,
   *     m²
   * @param axis where it is longer than wide
   * @param soffitOnly whether only what looks down is ever coated: deck
   */
  public Form(
      Originals originals,
      Boundary boundary,
      double holes,
      Optional<Axis> axis,
      boolean soffitOnly) {
    this(originals, boundary, holes, axis, soffitOnly, originals);
  }

  private Form(
      Originals originals,
      Boundary boundary,
      double holes,
      Optional<Axis> axis,
      boolean soffitOnly,
      Originals envelope) {
    this.originals = originals;
    this.boundary = boundary;
    this.holes = holes;
    this.axis = axis;
    this.soffitOnly = soffitOnly;
    this.envelope = envelope;
  }

  /** The same for others to stand in: nobody coats what is in its hollow inside. */
  public Form enclosing() {
    Map<Integer, Set<Face>> inner = new TreeMap<>();
    for (Patch p : boundary.patches()) {
      if (uses().of(p) == CoveredPatch.Use.INSIDE) {
        inner.computeIfAbsent(p.leaf(), leaf -> new HashSet<>()).add(p.face());
      }
    }
    if (inner.isEmpty()) {
      return this;
    }
    Map<Integer, Solid> filled = new TreeMap<>();
    inner.forEach((leaf, faces) -> filled.put(leaf, originals.leaves().get(leaf).filled(faces)));
    return new Form(originals, boundary, holes, axis, soffitOnly, originals.with(filled));
  }

  /** What its patches count as; found once, when it is first asked for. */
  Uses uses() {
    Uses known = uses;
    if (known == null) {
      known = new Uses(this);
      uses = known;
    }
    return known;
  }

  public Originals originals() {
    return originals;
  }

  /** What it fills or, where it encloses what is in its hollow inside, all within its outside. */
  Originals envelope() {
    return envelope;
  }

  public Boundary boundary() {
    return boundary;
  }

  public double holes() {
    return holes;
  }

  public Optional<Axis> axis() {
    return axis;
  }

  public boolean soffitOnly() {
    return soffitOnly;
  }

  /** A box about it. */
  public Box bounds() {
    return originals.bounds();
  }
}
