package org.coatrun.shared.bid.inspection;

import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.bid.material.MaterialLine;

/**
 * Draws members as if by lot, the same ones each time: each gets a ticket from the draw's number
 * and its GlobalId, and the lowest tickets are drawn. So a member that is added or taken away
 * changes no other member's ticket.
 */
final class Draw {

  private static final long FNV_BASIS = 0xcbf29ce484222325L;
  private static final long FNV_PRIME = 0x100000001b3L;
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private Draw() {}

  /** So many of the lines. */
  static List<MaterialLine> of(List<MaterialLine> lines, long count, int number) {
    return lines.stream()
        .sorted(
            Comparator.comparingLong((MaterialLine l) -> ticket(l.item().guid(), number))
                .thenComparing(l -> l.item().id()))
        .limit(count)
        .toList();
  }

  /** FNV-1a over the text, mixed as in SplitMix64 (public-domain algorithms). */
  static long ticket(String guid, int number) {
    long hash = FNV_BASIS;
    for (int i = 0; i < guid.length(); i++) {
      hash = (hash ^ guid.charAt(i)) * FNV_PRIME;
    }
    long z = hash + GOLDEN * (number + 1L);
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
