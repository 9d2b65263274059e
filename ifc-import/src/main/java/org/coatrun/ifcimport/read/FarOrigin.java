package org.coatrun.ifcimport.read;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.shape.Vec3;

/** What is taken off all placements of a model that stands far from the origin. */
final class FarOrigin {

  /** Nearer to the origin than this, in metres, a model keeps its own coordinates. */
  private static final double NEAR = 1000;

  /** A building is smaller than this, in metres; what stands farther off is misplaced. */
  private static final double WIDEST = 10_000;

  /** No coordinates on Earth are larger than this, in metres. */
  private static final double LARGEST = 1e9;

  /** Bodies that are asked where they stand; more would say the same. */
  private static final int MOST_ASKED = 101;

  private FarOrigin() {}

  /**
   * Whole metres near the first body that stands where the building is; zero near the origin. Where
   * the building is, the middle one of many bodies says: one whose placement is damaged must not
   * draw the others away with it, since they would lose all their digits.
   */
  static Vec3 of(List<FilePart> parts) {
    List<Vec3> places = places(parts);
    if (places.isEmpty()) {
      return Vec3.ZERO;
    }
    var middle = new Vec3(middle(places, Vec3::x), middle(places, Vec3::y), 0);
    return places.stream()
        .filter(p -> Math.hypot(p.x() - middle.x(), p.y() - middle.y()) < WIDEST)
        .findFirst()
        .map(p -> new Vec3(far(p.x()), far(p.y()), 0))
        .orElse(Vec3.ZERO);
  }

  private static List<Vec3> places(List<FilePart> parts) {
    List<Element> all =
        parts.stream()
            .flatMap(p -> Stream.of(p.members(), p.slabs(), p.walls(), p.decks()))
            .<Element>flatMap(List::stream)
            .filter(e -> e.body().isPresent())
            .toList();
    int step = Math.max(1, all.size() / MOST_ASKED);
    return IntStream.iterate(0, i -> i < all.size(), i -> i + step)
        .mapToObj(i -> all.get(i).body().placement().origin())
        .filter(p -> Math.abs(p.x()) < LARGEST && Math.abs(p.y()) < LARGEST)
        .toList();
  }

  private static double middle(List<Vec3> places, ToDoubleFunction<Vec3> coordinate) {
    return places.stream().mapToDouble(coordinate).sorted().toArray()[places.size() / 2];
  }

  private static double far(double coordinate) {
    return Math.abs(coordinate) > NEAR ? Math.rint(coordinate) : 0;
  }
}
