package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.Hardware.Item;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LineStock;
import org.coatrun.shared.units.Length;

/**
 * The pieces that legs of a line are made of. Each section of hose, length of pipe and bend has the
 * coupling that joins it to what lies before it; the reducer joins the whip.
 */
final class Loading {

  private static final double NOISE = 1e-6;

  private final LineStock stock;

  Loading(LineStock stock) {
    this.stock = stock;
  }

  /**
   * Pieces for a line or a part of one.
   *
   * @param floorsPassed floors that its rise passes, for the braces
   */
  List<Hardware> of(List<Leg> legs, int floorsPassed) {
    var pieces = new Counter();
    for (Leg leg : legs) {
      switch (leg.kind()) {
        case HOSE, RISER_HOSE -> hose(leg, pieces);
        case PIPE, RISER_PIPE -> pipe(leg, floorsPassed, pieces);
        case WHIP -> {
          pieces.add(Item.WHIP_HOSE, leg.laid(), 1);
          pieces.add(Item.REDUCER, Length.ZERO, 1);
        }
      }
    }
    return pieces.list();
  }

  /** A pole gun of at least this length, in sections, with its tip. */
  List<Hardware> poleGun(Length length) {
    if (length.metres() <= 0) {
      return List.of();
    }
    var pieces = new Counter();
    pieces.add(
        Item.POLE_GUN_SECTION, stock.poleGunSection(), whole(length, stock.poleGunSection()));
    pieces.add(Item.POLE_GUN_TIP, stock.poleGunTip(), 1);
    return pieces.list();
  }

  /** Both together. */
  static List<Hardware> sum(List<Hardware> a, List<Hardware> b) {
    var pieces = new Counter();
    a.forEach(h -> pieces.add(h.item(), h.size(), h.count()));
    b.forEach(h -> pieces.add(h.item(), h.size(), h.count()));
    return pieces.list();
  }

  /** Of each kind and size, the larger count: what serves one after the other. */
  static List<Hardware> most(List<Hardware> a, List<Hardware> b) {
    var pieces = new Counter();
    a.forEach(h -> pieces.atLeast(h));
    b.forEach(h -> pieces.atLeast(h));
    return pieces.list();
  }

  /** Fewest sections that reach as far as the shortest ones would, long ones first. */
  private void hose(Leg leg, Counter pieces) {
    List<Length> sections = stock.hoseSections();
    Length shortest = sections.get(sections.size() - 1);
    double left = whole(leg.laid(), shortest) * shortest.metres();
    for (Length section : sections) {
      int n = (int) Math.floor(left / section.metres() + NOISE);
      pieces.add(Item.TRANSFER_HOSE, section, n);
      left -= n * section.metres();
    }
  }

  private void pipe(Leg leg, int floorsPassed, Counter pieces) {
    int lengths = whole(leg.laid(), stock.pipeLength());
    boolean rises = leg.kind().rising();
    int bends = leg.bends() + (rises ? 2 : 0);
    pieces.add(Item.STANDPIPE, stock.pipeLength(), lengths);
    pieces.add(Item.PIPE_BEND, Length.ZERO, bends);
    pieces.add(
        Item.PIPE_CLAMP,
        Length.ZERO,
        rises ? Math.max(floorsPassed, 1) : whole(leg.laid(), stock.clampSpacing()));
    pieces.add(Item.CLEAN_OUT, Length.ZERO, rises ? 1 : 0);
  }

  private static int whole(Length length, Length piece) {
    return (int) Math.ceil(length.metres() / piece.metres() - NOISE);
  }

  /** Counts by kind and size; couplings follow from what they join. */
  private static final class Counter {
    private final Map<Hardware, Integer> counts = new TreeMap<>();

    void add(Item item, Length size, int count) {
      if (count > 0 && !coupling(item)) {
        counts.merge(new Hardware(item, size, 0), count, Integer::sum);
      }
    }

    void atLeast(Hardware h) {
      if (!coupling(h.item())) {
        counts.merge(new Hardware(h.item(), h.size(), 0), h.count(), Math::max);
      }
    }

    List<Hardware> list() {
      var list = new ArrayList<Hardware>();
      counts.forEach((h, n) -> list.add(new Hardware(h.item(), h.size(), n)));
      couplings(Item.HOSE_COUPLING, count(Item.TRANSFER_HOSE), list);
      couplings(Item.PIPE_COUPLING, count(Item.STANDPIPE) + count(Item.PIPE_BEND), list);
      return list.stream().sorted().toList();
    }

    private int count(Item item) {
      return counts.entrySet().stream()
          .filter(e -> e.getKey().item() == item)
          .mapToInt(Map.Entry::getValue)
          .sum();
    }

    private static void couplings(Item item, int count, List<Hardware> to) {
      if (count > 0) {
        to.add(new Hardware(item, Length.ZERO, count));
      }
    }

    private static boolean coupling(Item item) {
      return item == Item.HOSE_COUPLING || item == Item.PIPE_COUPLING;
    }
  }
}
