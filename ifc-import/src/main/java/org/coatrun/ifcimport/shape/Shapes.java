package org.coatrun.ifcimport.shape;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;
import org.coatrun.ifcimport.entity.Units;
import org.coatrun.ifcimport.schema.EntityType;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** The bodies of one file, read when asked for. Safe for several threads. */
public final class Shapes {

  private static final int MOST_STEPS_DOWN = 100;
  private static final List<String> LEADING =
      List.of("IfcSweptAreaSolid", "IfcBooleanResult", "IfcMappedItem", "IfcCsgSolid");

  private final Units units;
  private final MappedShapes mapped = new MappedShapes();
  private final RecentBodies recent;
  private final Fingerprints prints;
  private final Placements placements;
  private final Origin origin;

  /** The bodies of a file, about an origin that may still be chosen. */
  public Shapes(IfcModel model, Units units, Origin origin) {
    this.units = units;
    this.recent = new RecentBodies(model);
    this.prints = new Fingerprints(model);
    this.origin = origin;
    this.placements = new Placements(model, new Axes(units.length()), units.angle());
  }

  /** The body of a product, looked into only when asked. */
  public Body body(Entity product) {
    OptionalLong shape = product.refId("Representation");
    return shape.isEmpty()
        ? Body.none()
        : new FileBody(this, product.refId("ObjectPlacement").orElse(-1), shape.getAsLong());
  }

  /** Where a product stands in world axes, the common origin not taken off. */
  public Transform3 world(Entity product) {
    OptionalLong placement = product.refId("ObjectPlacement");
    return placement.isPresent() ? placements.world(placement.getAsLong()) : Transform3.IDENTITY;
  }

  /** The point where a placement stands; empty where it is broken. */
  public Optional<Vec3> originOf(long placement) {
    return placements.originOf(placement);
  }

  /** How many bodies a product has that stand for one thing; none where they are broken. */
  public int bodies(Entity product) {
    OptionalLong shape = product.refId("Representation");
    try {
      return shape.isEmpty() ? 0 : recent.bodies(shape.getAsLong());
    } catch (BrokenRecordException e) {
      return 0;
    }
  }

  /**
   * What is wrong with the chain of placements that a product stands by; empty where nothing is.
   */
  public Optional<BrokenRecordException> placementFault(Entity product) {
    OptionalLong placement = product.refId("ObjectPlacement");
    return placement.isEmpty() ? Optional.empty() : placements.fault(placement.getAsLong());
  }

  boolean hasBody(long productShape) {
    try {
      return recent.of(productShape).isPresent();
    } catch (BrokenRecordException e) {
      return true;
    }
  }

  Transform3 placement(long placement) {
    Transform3 world = Transform3.IDENTITY;
    if (placement >= 0) {
      try {
        world = placements.world(placement);
      } catch (BrokenRecordException e) {
        // The shape of this body says what is wrong; here there is only a place to give.
        return Transform3.IDENTITY;
      }
    }
    return world.about(world.origin().minus(origin.chosen()));
  }

  /** By the writing of its records, which mean something else in another file. */
  private record Likeness(Shapes file, Fingerprints.Print print) {

    // Written out: see the conventions in DEVELOPERS.md.

    @Override
    public boolean equals(Object other) {
      return other instanceof Likeness o && file == o.file && print.equals(o.print);
    }

    @Override
    public int hashCode() {
      return print.hashCode();
    }
  }

  /** Empty also where shape or placement are broken: what is wrong is said of each body. */
  Optional<Object> likeness(long placement, long productShape) {
    try {
      if (placement >= 0) {
        placements.world(placement);
      }
      Optional<Entity> body = recent.of(productShape);
      Optional<Fingerprints.Print> print =
          body.isPresent() ? prints.of(body.get().refIds("Items")) : Optional.empty();
      return print.isPresent() ? Optional.of(new Likeness(this, print.get())) : Optional.empty();
    } catch (BrokenRecordException e) {
      return Optional.empty();
    }
  }

  Shape shape(long placement, long productShape) {
    try {
      if (placement >= 0) {
        placements.world(placement);
      }
      Optional<Entity> body = recent.of(productShape);
      if (body.isEmpty()) {
        return new Shape.Compound(List.of());
      }
      return new ItemReader(units, mapped).shape(body.get().needRefs("Items"));
    } catch (BrokenRecordException e) {
      return new Shape.Unsupported(e.kind(), e.words());
    } catch (EndlessShapeException e) {
      return new Shape.Endless(e.getMessage());
    }
  }

  /** The profile as described by its record. */
  public Profile profile(Entity profile) {
    try {
      return new ItemReader(units, mapped).profiles().profile(profile);
    } catch (EndlessShapeException e) {
      return new Profile.Unsupported(profile.text("ProfileName"), profile.kind());
    }
  }

  /**
   * The profile that a product's body is swept from, without reading the body; empty for others.
   */
  public Optional<Entity> sweptProfile(Entity product) {
    try {
      OptionalLong shape = product.refId("Representation");
      Optional<Entity> body = shape.isEmpty() ? Optional.empty() : recent.of(shape.getAsLong());
      return body.flatMap(Shapes::leadingItem).flatMap(Shapes::profileOf);
    } catch (BrokenRecordException e) {
      return Optional.empty();
    }
  }

  /** The first item of a body, if it is of a kind that may lead to a profile. */
  private static Optional<Entity> leadingItem(Entity representation) {
    long[] items = representation.refIds("Items");
    IfcModel model = representation.model();
    Optional<EntityType> first = items.length == 0 ? Optional.empty() : model.typeOf(items[0]);
    return first.isPresent() && first.get().isAny(LEADING)
        ? Optional.of(model.get(items[0]))
        : Optional.empty();
  }

  private static Optional<Entity> profileOf(Entity item) {
    Entity at = item;
    for (int i = 0; i < MOST_STEPS_DOWN; i++) {
      if (at.isA("IfcSweptAreaSolid")) {
        return at.ref("SweptArea");
      }
      if (at.isA("IfcBooleanResult")) {
        at = at.need("FirstOperand");
      } else if (at.isA("IfcMappedItem")) {
        at = at.need("MappingSource").need("MappedRepresentation").needRefs("Items").get(0);
      } else if (at.isA("IfcCsgSolid")) {
        at = at.need("TreeRootExpression");
      } else {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
