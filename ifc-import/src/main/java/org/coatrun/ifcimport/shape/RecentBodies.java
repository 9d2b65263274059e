package org.coatrun.ifcimport.shape;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;

/**
 * Which representation is the body, remembered for the last few products: what one is made of and
 * whether it has a body are asked one after the other. Safe for several threads.
 */
final class RecentBodies {

  private static final int KEPT = 256;

  private record Choice(long shape, Optional<Entity> body, int bodies) {}

  private final IfcModel model;
  private final AtomicReferenceArray<Choice> choices = new AtomicReferenceArray<>(KEPT);

  RecentBodies(IfcModel model) {
    this.model = model;
  }

  /**
   * The body of a product's shape, by the number of its record.
   *
   * @throws org.coatrun.ifcimport.entity.BrokenRecordException where the record makes no sense
   */
  Optional<Entity> of(long productShape) {
    return choice(productShape).body;
  }

  /** How many bodies it was chosen from. */
  int bodies(long productShape) {
    return choice(productShape).bodies;
  }

  private Choice choice(long productShape) {
    int slot = (int) (productShape & (KEPT - 1));
    Choice choice = choices.get(slot);
    if (choice == null || choice.shape != productShape) {
      List<Entity> bodies = BodyChoice.bodies(model.get(productShape));
      Optional<Entity> best = bodies.isEmpty() ? Optional.empty() : Optional.of(bodies.get(0));
      choice = new Choice(productShape, best, bodies.size());
      choices.set(slot, choice);
    }
    return choice;
  }
}
