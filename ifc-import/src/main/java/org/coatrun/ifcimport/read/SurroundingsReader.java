package org.coatrun.ifcimport.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.LongStream;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.recognise.Decks;
import org.coatrun.ifcimport.recognise.Description;
import org.coatrun.ifcimport.recognise.Substances;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Bulk;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Stair;
import org.coatrun.shared.model.Wall;

/** What stands around the steel: decks, slabs, walls, footings, stairs, rooms, openings. */
final class SurroundingsReader {

  private final SourceFile file;
  private final Describer describer;
  private final List<Deck> decks = new ArrayList<>();
  private final List<Slab> slabs = new ArrayList<>();

  SurroundingsReader(SourceFile file, Describer describer) {
    this.file = file;
    this.describer = describer;
    for (String kind : List.of("IfcSlab", "IfcRoof")) {
      each(kind, this::addSlab);
    }
    each("IfcBuildingElementPart", this::addDeckPart);
    each("IfcBuildingElementProxy", this::addDeckPart);
  }

  private void each(String kind, Consumer<Entity> work) {
    for (long id : file.model().idsOf(kind)) {
      try {
        Entity element = file.model().get(id);
        describer.sayOfPlace(element);
        work.accept(element);
      } catch (BrokenRecordException e) {
        file.findings().broken(e);
      }
    }
  }

  private <T> List<T> all(Function<Entity, Optional<T>> work, String... kinds) {
    var found = new ArrayList<T>();
    for (String kind : kinds) {
      each(kind, e -> work.apply(e).ifPresent(found::add));
    }
    return found;
  }

  List<Deck> decks() {
    return decks;
  }

  List<Slab> slabs() {
    return slabs;
  }

  private void addSlab(Entity slab) {
    Body body = file.shapes().body(slab);
    boolean whole = file.relations().partsOf.first(slab.id()) >= 0;
    if (whole && !body.isPresent()) {
      return;
    }
    Description d = describer.describe(slab);
    List<Evidence> evidence = new ArrayList<>(Decks.evidence(d));
    if (evidence.isEmpty() && Decks.isSteelSlab(d)) {
      evidence.add(new Evidence(Evidence.Source.MATERIAL, d.materials().get(0).name()));
    }
    if (evidence.isEmpty()) {
      slabs.add(
          new Slab(
              describer.identity(slab),
              kind(slab, d),
              d.materials(),
              describer.properties(slab),
              body));
    } else {
      addDeck(slab, d, evidence, body);
    }
  }

  private void addDeck(Entity e, Description d, List<Evidence> evidence, Body body) {
    describer.sayOfBodies(e);
    decks.add(
        new Deck(
            describer.identity(e),
            Decks.form(d, evidence),
            describer.isRoof(e),
            evidence,
            d.materials(),
            describer.properties(e),
            body));
  }

  /** Deck may be a part of a slab or roof, or a thing of no class, if its own names say so. */
  private void addDeckPart(Entity part) {
    Description d = describer.describe(part);
    boolean ofFloor = List.of("IfcSlab", "IfcRoof").contains(d.wholeEntity());
    boolean proxy = part.isA("IfcBuildingElementProxy");
    List<Evidence> evidence = Decks.evidence(d);
    Body body = file.shapes().body(part);
    if ((ofFloor || proxy) && !evidence.isEmpty() && body.isPresent()) {
      addDeck(part, d, evidence, body);
    } else if (ofFloor && body.isPresent()) {
      slabs.add(
          new Slab(
              describer.identity(part),
              kind(part, d),
              d.materials(),
              describer.properties(part),
              body));
    }
  }

  private Slab.Kind kind(Entity slab, Description d) {
    return switch (d.predefined()) {
      case "LANDING" -> Slab.Kind.LANDING;
      case "BASESLAB" -> Slab.Kind.BASE;
      default -> describer.isRoof(slab) ? Slab.Kind.ROOF : Slab.Kind.FLOOR;
    };
  }

  List<Wall> walls() {
    return all(
        wall -> {
          Description d = describer.describe(wall);
          return Optional.of(
              new Wall(
                  describer.identity(wall),
                  Substances.of(d),
                  d.materials(),
                  describer.properties(wall),
                  file.shapes().body(wall)));
        },
        "IfcWall",
        "IfcCurtainWall");
  }

  List<Bulk> bulks() {
    return all(
        bulk ->
            Optional.of(
                new Bulk(
                    describer.identity(bulk),
                    Substances.of(describer.describe(bulk)),
                    file.shapes().body(bulk))),
        "IfcFooting",
        "IfcPile",
        "IfcCaissonFoundation");
  }

  List<Stair> stairs() {
    return all(
        s -> Optional.of(new Stair(describer.identity(s), file.shapes().body(s))),
        "IfcStair",
        "IfcStairFlight",
        "IfcRamp",
        "IfcRampFlight");
  }

  List<Space> spaces() {
    return all(
        s ->
            Optional.of(
                new Space(
                    describer.identity(s),
                    s.text("LongName"),
                    describer.properties(s),
                    file.shapes().body(s))),
        "IfcSpace");
  }

  List<Opening> openings() {
    return all(this::opening, "IfcFeatureElementSubtraction");
  }

  private Optional<Opening> opening(Entity opening) {
    long host = file.relations().hostOf.first(opening.id());
    if (host < 0) {
      file.findings()
          .add(
              ModelFinding.OPENING_WITHOUT_HOST,
              opening.id(),
              opening.text("GlobalId"),
              "Opening '" + opening.text("Name") + "' cuts nothing.");
      return Optional.empty();
    }
    return Optional.of(
        new Opening(
            describer.identity(opening),
            new ElementId(file.number(), host),
            fill(opening.id()),
            file.shapes().body(opening)));
  }

  private Opening.Fill fill(long opening) {
    long[] fills = file.relations().fillOf.all(opening);
    if (fills.length == 0) {
      return Opening.Fill.NOTHING;
    }
    if (LongStream.of(fills).anyMatch(f -> file.model().isA(f, "IfcDoor"))) {
      return Opening.Fill.DOOR;
    }
    return LongStream.of(fills).anyMatch(f -> file.model().isA(f, "IfcWindow"))
        ? Opening.Fill.WINDOW
        : Opening.Fill.OTHER;
  }
}
