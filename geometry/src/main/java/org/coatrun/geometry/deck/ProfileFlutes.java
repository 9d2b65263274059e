package org.coatrun.geometry.deck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.rules.DeckGeometry;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Cover;
import org.coatrun.shared.surface.FluteVoid;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Volume;

/**
 * Flute voids over members under decks that the model draws flat, by the job's deck profile.
 *
 * <p>The flutes of such a deck are taken to run across the members that carry it on the greatest
 * area, and those within 45° of them: deck spans from beam to beam (common practice). Per area of
 * flange that the flat deck covers, the open part is (pitch − bottom width) / pitch, the void's
 * volume depth · (2 pitch − top − bottom) / 2 / pitch.
 */
public final class ProfileFlutes {

  private static final double ACROSS = Math.sqrt(0.5);

  private final DeckGeometry profile;
  private final Map<ElementId, Vec3> axes;

  /** With the directions of members that run along an axis. */
  public ProfileFlutes(DeckGeometry profile, Map<ElementId, Vec3> axes) {
    this.profile = profile;
    this.axes = Map.copyOf(axes);
  }

  /** The measurements with what this deck profile adds to them. */
  public SortedMap<ElementId, Measurement> added(SortedMap<ElementId, Measurement> given) {
    var out = new TreeMap<>(given);
    SortedMap<ElementId, List<Bearing>> bearings = bearings(given);
    for (Map.Entry<ElementId, List<Bearing>> deck : bearings.entrySet()) {
      Vec3 carried = carriers(deck.getValue());
      for (Bearing b : deck.getValue()) {
        if (Math.abs(axes.get(b.member()).dot(carried)) > ACROSS
            && out.get(b.member()) instanceof Measurement.Measured m) {
          var voids = new ArrayList<>(m.fluteVoids());
          voids.add(over(deck.getKey(), b.area()));
          voids.sort(Comparator.comparing(FluteVoid::deck));
          out.put(b.member(), m.with(voids));
        }
      }
    }
    return out;
  }

  private record Bearing(ElementId member, double area) {}

  private SortedMap<ElementId, List<Bearing>> bearings(Map<ElementId, Measurement> given) {
    var flat = new TreeSet<ElementId>();
    given.values().forEach(m -> addFlat(m, flat));
    var out = new TreeMap<ElementId, List<Bearing>>();
    for (Measurement m : given.values()) {
      if (m instanceof Measurement.Measured member && axes.containsKey(member.id())) {
        for (Cover c : member.covers()) {
          if (c.kind() == Cover.Kind.CONTACT && flat.contains(c.by())) {
            out.computeIfAbsent(c.by(), k -> new ArrayList<>())
                .add(new Bearing(member.id(), c.area().squareMetres()));
          }
        }
      }
    }
    return out;
  }

  private static void addFlat(Measurement m, Set<ElementId> flat) {
    if (m instanceof Measurement.Measured d
        && d.soffit().isPresent()
        && !d.soffit().get().fluted()) {
      flat.add(d.id());
    }
  }

  /** The direction with the greatest bearing within 45°; the first of equals. */
  private Vec3 carriers(List<Bearing> bearings) {
    Vec3 best = Vec3.X;
    double most = -1;
    for (Bearing b : bearings) {
      Vec3 d = axes.get(b.member());
      double sum = 0;
      for (Bearing o : bearings) {
        sum += Math.abs(axes.get(o.member()).dot(d)) > ACROSS ? o.area() : 0;
      }
      if (sum > most * (1 + 1e-9)) {
        most = sum;
        best = d;
      }
    }
    return best;
  }

  private FluteVoid over(ElementId deck, double flange) {
    double pitch = profile.pitch().metres();
    double top = profile.topOpening().metres();
    double bottom = profile.bottomWidth().metres();
    double section = profile.depth().metres() * (2 * pitch - top - bottom) / 2;
    return new FluteVoid(
        deck,
        Area.ofSquareMetres(flange * (pitch - bottom) / pitch),
        Area.ofSquareMetres(flange * (profile.developed().metres() - bottom) / pitch),
        Volume.ofCubicMetres(flange * section / pitch),
        /* drawn= */ false);
  }
}
