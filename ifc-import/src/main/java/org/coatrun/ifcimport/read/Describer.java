package org.coatrun.ifcimport.read;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.read.Materials.MaterialSet;
import org.coatrun.ifcimport.recognise.Description;
import org.coatrun.ifcimport.schema.EntityType;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.shape.Profile;

/** Gathers what a file says of an element: type, materials, profile, place in the structure. */
final class Describer {

  private static final TypeFacts NO_TYPE = new TypeFacts("", "", MaterialSet.NONE, new long[0]);

  private final SourceFile file;
  private final Structure structure;
  private final Map<Long, TypeFacts> types = new ConcurrentHashMap<>();
  private final Map<Long, Profile> profiles = new ConcurrentHashMap<>();

  Describer(SourceFile file, Structure structure) {
    this.file = file;
    this.structure = structure;
  }

  /** What elements have from their type. */
  record TypeFacts(String name, String predefined, MaterialSet materials, long[] propertySets) {}

  long typeId(Entity element) {
    return file.relations().typeOf.first(element.id());
  }

  TypeFacts type(Entity element) {
    long id = typeId(element);
    if (id < 0) {
      return NO_TYPE;
    }
    TypeFacts known = types.get(id);
    return known != null ? known : types.computeIfAbsent(id, this::readType);
  }

  private TypeFacts readType(long id) {
    try {
      Entity type = file.model().get(id);
      String name = type.text("Name").isBlank() ? type.text("ElementType") : type.text("Name");
      return new TypeFacts(name, predefined(type), materialOf(id), type.refIds("HasPropertySets"));
    } catch (BrokenRecordException e) {
      file.findings().broken(e);
      return NO_TYPE;
    }
  }

  private static String predefined(Entity of) {
    String item = of.item("PredefinedType").orElse("");
    return item.equals("NOTDEFINED") || item.equals("USERDEFINED") ? "" : item;
  }

  private MaterialSet materialOf(long object) {
    long id = file.relations().materialOf.first(object);
    return id < 0 ? MaterialSet.NONE : file.materials().read(id);
  }

  /** The element's own materials, else its type's. */
  private MaterialSet materials(Entity element, TypeFacts type) {
    MaterialSet own = materialOf(element.id());
    return own.materials().isEmpty() && own.profile().isEmpty() ? type.materials() : own;
  }

  Description describe(Entity element) {
    TypeFacts type = type(element);
    MaterialSet set = materials(element, type);
    return new Description(
        element.kind(),
        ownOrTypes(element, type),
        element.text("Name"),
        element.text("ObjectType"),
        type.name(),
        set.materials(),
        profile(element, set),
        set.profileName().isBlank() ? profileProperties(element) : set.profileName(),
        wholeKind(element));
  }

  private static String ownOrTypes(Entity element, TypeFacts type) {
    String own = predefined(element);
    return own.isEmpty() ? type.predefined() : own;
  }

  /**
   * Whether the model says that an element is roof: by its class or predefined type, its type's, or
   * so of a whole that it is a part of, however far up.
   */
  boolean isRoof(Entity element) {
    Optional<Entity> at = Optional.of(element);
    for (int i = 0; i < Structure.MOST_NESTED && at.isPresent(); i++) {
      Entity e = at.get();
      if (e.isA("IfcRoof") || ownOrTypes(e, type(e)).equals("ROOF")) {
        return true;
      }
      at = structure.wholeOf(e.id()).flatMap(w -> file.model().find(w.step()));
    }
    return false;
  }

  private Optional<Profile> profile(Entity element, MaterialSet set) {
    Optional<Entity> swept = file.shapes().sweptProfile(element);
    Optional<Entity> from = swept.isPresent() ? swept : set.profile();
    return from.isPresent() ? Optional.of(cached(from.get())) : Optional.empty();
  }

  private Profile cached(Entity profile) {
    Profile known = profiles.get(profile.id());
    if (known == null) {
      known = file.shapes().profile(profile);
      if (profiles.size() < 4096) {
        profiles.put(profile.id(), known);
      }
    }
    return known;
  }

  private String profileProperties(Entity element) {
    long id = file.relations().profilePropertiesOf.first(element.id());
    return id < 0 ? "" : file.model().find(id).map(p -> p.text("ProfileName")).orElse("");
  }

  private String wholeKind(Entity element) {
    Optional<ElementId> whole = structure.wholeOf(element.id());
    return whole.isPresent()
        ? file.model().typeOf(whole.get().step()).map(EntityType::name).orElse("")
        : "";
  }

  /** Whether an element is among its own wholes; it counts as having none then. */
  boolean isPartOfItself(Entity element) {
    return structure.isPartOfItself(element.id());
  }

  Identity identity(Entity element) {
    return new Identity(
        new ElementId(file.number(), element.id()),
        element.text("GlobalId"),
        element.kind(),
        element.text("Name"),
        element.text("Tag"),
        type(element).name(),
        structure.storeyOf(element.id()),
        structure.wholeOf(element.id()));
  }

  /** Says so where the chain of placements that an element stands by does not end. */
  void sayOfPlace(Entity element) {
    Optional<BrokenRecordException> fault = file.shapes().placementFault(element);
    if (fault.isPresent()) {
      long step = fault.get().step();
      file.findings()
          .add(
              ModelFinding.BROKEN_PLACEMENT,
              file.model().file().contains(step) ? step : element.id(),
              "",
              fault.get().getMessage() + ".");
    }
  }

  /** Says so where one body was chosen from several. */
  void sayOfBodies(Entity element) {
    int bodies = file.shapes().bodies(element);
    if (bodies > 1) {
      file.findings()
          .add(
              ModelFinding.SEVERAL_BODIES,
              element.id(),
              element.text("GlobalId"),
              element.kind() + " '" + element.text("Name") + "' has " + bodies + " bodies.");
    }
  }

  FileProperties properties(Entity element) {
    return new FileProperties(file, element.id(), type(element).propertySets());
  }
}
