package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Bulk;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Substance;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;

/** Finds the level tops of slabs, of decks and of the concrete on them. */
final class Tops {

  /** Faces flatter than one in six carry a person (common practice). */
  private static final double FLAT = Math.cos(Math.atan(1.0 / 6));

  /** Parts of one top that differ by less are one. */
  private static final double STEP = 0.02;

  /** A top that climbs more than this is a ramp between floors. */
  private static final double RAMP = 0.9;

  private static final double LEAST = 0.25;
  private static final double THICKEST_FILL = 0.6;

  private final Cuts cuts;
  private final List<Top> tops = new ArrayList<>();

  private Tops(Cuts cuts) {
    this.cuts = cuts;
  }

  /** All tops, in the order of the elements. */
  static List<Top> of(Building building, Cuts cuts) {
    Tops all = new Tops(cuts);
    for (Slab slab : building.slabs()) {
      if (slab.kind() != Slab.Kind.LANDING) {
        all.add(slab, Top.Kind.SLAB);
      }
    }
    for (Deck deck : building.decks()) {
      all.add(deck, deck.form() == Deck.Form.SLAB_ON_DECK ? Top.Kind.SLAB : Top.Kind.BARE_DECK);
    }
    for (Bulk bulk : building.bulks()) {
      if (bulk.classification().substance() == Substance.CONCRETE) {
        all.add(bulk, Top.Kind.FILL);
      }
    }
    return all.tops;
  }

  private void add(Element element, Top.Kind kind) {
    Optional<Cut> cut = cuts.of(element);
    if (cut.isEmpty() || (kind == Top.Kind.FILL && !isWide(cut.get()))) {
      return;
    }
    try {
      boolean fluted = element instanceof Deck d && d.form() == Deck.Form.SHEET;
      if (fluted) {
        addWhole(cut.get(), kind);
      } else {
        addSteps(cut.get(), kind);
      }
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      cuts.say(element, "could not be seen from above");
    }
  }

  private static boolean isWide(Cut cut) {
    var b = cut.box();
    double height = b.maxZ() - b.minZ();
    double narrow = Math.min(b.maxX() - b.minX(), b.maxY() - b.minY());
    return height <= THICKEST_FILL && narrow > 2 * height;
  }

  /** Of a fluted sheet, all that looks up is one top at its highest point. */
  private void addWhole(Cut cut, Top.Kind kind) {
    var parts = new ArrayList<Geometry>();
    for (Patch p : cut.boundary().patches()) {
      if (looksUp(p, cut.closed())) {
        parts.add(Cut.shadow(p));
      }
    }
    addTop(kind, cut.box().maxZ(), cut, parts);
  }

  private void addSteps(Cut cut, Top.Kind kind) {
    var steps = new TreeMap<Long, List<Geometry>>();
    var heights = new TreeMap<Long, Double>();
    for (Patch p : cut.boundary().patches()) {
      if (looksUp(p, cut.closed())) {
        if (p.bounds().maxZ() - p.bounds().minZ() > RAMP) {
          cuts.say(cut.element(), "rises like a ramp; that part is left out of the floors");
          continue;
        }
        double z = 0.5 * (p.bounds().minZ() + p.bounds().maxZ());
        long step = Math.round(z / STEP);
        steps.computeIfAbsent(step, k -> new ArrayList<>()).add(Cut.shadow(p));
        heights.merge(step, z, Math::max);
      }
    }
    for (Map.Entry<Long, List<Geometry>> e : steps.entrySet()) {
      addTop(kind, heights.get(e.getKey()), cut, e.getValue());
    }
  }

  /** Faces of an open body may be turned either way. */
  private static boolean looksUp(Patch p, boolean closed) {
    double up = p.plane().nz();
    return up >= FLAT || (!closed && up <= -FLAT);
  }

  private void addTop(Top.Kind kind, double z, Cut cut, List<Geometry> parts) {
    Geometry region = Plan.union(parts);
    if (region.getArea() >= LEAST) {
      double under = Math.min(cut.box().minZ(), z);
      tops.add(new Top(kind, z, under, region, Optional.of(cut.element())));
    }
  }
}
