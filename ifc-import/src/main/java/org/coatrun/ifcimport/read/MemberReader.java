package org.coatrun.ifcimport.read;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.recognise.Decks;
import org.coatrun.ifcimport.recognise.Description;
import org.coatrun.ifcimport.recognise.Recogniser;
import org.coatrun.ifcimport.recognise.Recognition;
import org.coatrun.ifcimport.recognise.SectionNames;
import org.coatrun.ifcimport.schema.EntityType;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Substance;

/**
 * Members: each beam, column, member and plate of the file, whatever it is made of, and of other
 * kinds those found to be structural steel.
 */
final class MemberReader {

  private static final List<String> ALWAYS =
      List.of("IfcBeam", "IfcColumn", "IfcMember", "IfcPlate");
  private static final List<String> SOMETIMES =
      List.of(
          "IfcBuildingElementProxy",
          "IfcBuildingElementPart",
          "IfcDiscreteAccessory",
          "IfcFastener",
          "IfcMechanicalFastener",
          "IfcElementAssembly",
          "IfcProxy");
  private static final List<String> CHECKED_QUANTITIES =
      List.of(
          "Length",
          "CrossSectionArea",
          "OuterSurfaceArea",
          "GrossSurfaceArea",
          "NetSurfaceArea",
          "GrossVolume",
          "NetVolume",
          "GrossWeight",
          "NetWeight");

  private final SourceFile file;
  private final Describer describer;
  private final Workers workers;
  private final Recogniser recogniser = new Recogniser();
  private final Queue<Deck> decks = new ConcurrentLinkedQueue<>();

  /** How many of each kind show no sign of structural steel. */
  private final Map<String, Integer> passedOver = new ConcurrentHashMap<>();

  MemberReader(SourceFile file, Describer describer, Workers workers) {
    this.file = file;
    this.describer = describer;
    this.workers = workers;
  }

  List<Member> read() {
    List<Member> members = workers.map(candidates(), this::member);
    passedOver.forEach(
        (kind, count) ->
            file.findings()
                .add(
                    ModelFinding.NOT_LOOKED_AT,
                    0,
                    "",
                    count + " × " + kind + " show no sign of structural steel."));
    return members;
  }

  /** Each once, ascending: in the older schema a mechanical fastener is a fastener too. */
  private long[] candidates() {
    return Stream.concat(ALWAYS.stream(), SOMETIMES.stream())
        .flatMapToLong(kind -> LongStream.of(file.model().idsOf(kind)))
        .sorted()
        .distinct()
        .toArray();
  }

  /** Null where the element is of a kind that counts only as structural steel, and is none. */
  private Member member(long id) {
    EntityType type = file.model().typeOf(id).orElseThrow();
    if (type.isAny(ALWAYS)) {
      return always(id);
    }
    Member steel = sometimes(id);
    if (steel == null) {
      passedOver.merge(type.name(), 1, Integer::sum);
    }
    return steel;
  }

  private Member always(long id) {
    Entity element = file.model().get(id);
    try {
      Description d = describer.describe(element);
      return member(element, d, recogniser.of(d));
    } catch (BrokenRecordException e) {
      file.findings().broken(e);
      return bare(element);
    }
  }

  /** A member of which nothing more can be told than that it is there. */
  private Member bare(Entity element) {
    describer.sayOfPlace(element);
    var identity =
        new Identity(
            new ElementId(file.number(), element.id()),
            element.text("GlobalId"),
            element.kind(),
            element.text("Name"),
            element.text("Tag"),
            "",
            Optional.empty(),
            Optional.empty());
    return new Member(
        identity,
        Role.OTHER,
        SectionName.NONE,
        new Classification(Substance.UNKNOWN, List.of()),
        List.of(),
        Properties.none(),
        file.shapes().body(element));
  }

  /** Null where the element is no structural steel. */
  private Member sometimes(long id) {
    try {
      Entity element = file.model().get(id);
      Description d = describer.describe(element);
      Recognition recognition = recogniser.of(d);
      boolean steel = recognition.isStructural() && element.refId("Representation").isPresent();
      return steel ? member(element, d, recognition) : null;
    } catch (BrokenRecordException e) {
      file.findings().broken(e);
      return null;
    }
  }

  private Member member(Entity element, Description d, Recognition recognition) {
    FileProperties properties = describer.properties(element);
    Body body = body(element);
    say(element, recognition, properties, body);
    if (recognition.isSheet() && body.isPresent()) {
      decks.add(sheet(element, d, properties, body));
    }
    describer.sayOfPlace(element);
    describer.sayOfBodies(element);
    return new Member(
        describer.identity(element),
        recognition.role(),
        SectionNames.of(d, recognition, properties),
        recognition.substance(),
        d.materials(),
        properties,
        body);
  }

  private Deck sheet(Entity element, Description d, FileProperties properties, Body body) {
    List<Evidence> evidence = Decks.evidence(d);
    return new Deck(
        describer.identity(element),
        Decks.form(d, evidence),
        describer.isRoof(element),
        evidence,
        d.materials(),
        properties,
        body);
  }

  /** Those of the members read that are sheets of deck, by their numbers. */
  List<Deck> decks() {
    return decks.stream().sorted(Comparator.comparing(Deck::id)).toList();
  }

  /** A whole whose parts have bodies that are counted has none of its own: nothing counts twice. */
  private Body body(Entity element) {
    Body own = file.shapes().body(element);
    long[] parts = file.relations().partsOf.all(element.id());
    if (parts.length == 0 || LongStream.of(parts).noneMatch(this::isCountedPart)) {
      return own;
    }
    if (own.isPresent()) {
      file.findings()
          .add(
              ModelFinding.WHOLE_AND_PARTS,
              element.id(),
              element.text("GlobalId"),
              element.kind()
                  + " '"
                  + element.text("Name")
                  + "' has a body, and so have its parts.");
    }
    return Body.none();
  }

  private boolean isCountedPart(long part) {
    return file.model()
        .find(part)
        .filter(p -> p.type().isAny(ALWAYS) || isSteelPart(p))
        .filter(p -> !describer.isPartOfItself(p))
        .map(p -> file.shapes().body(p).isPresent())
        .orElse(false);
  }

  private boolean isSteelPart(Entity part) {
    return part.type().isAny(SOMETIMES) && recogniser.of(describer.describe(part)).isStructural();
  }

  private void say(Entity element, Recognition recognition, FileProperties properties, Body body) {
    if (!body.isPresent() && file.relations().partsOf.first(element.id()) < 0) {
      say(element, ModelFinding.NO_BODY, what(element) + " has no body.");
    }
    if (recognition.substance().substance() == Substance.UNKNOWN) {
      say(
          element,
          ModelFinding.UNKNOWN_SUBSTANCE,
          "Nothing says what " + what(element) + " is of.");
    }
    if (recognition.isContradictory()) {
      say(
          element,
          ModelFinding.CONTRADICTORY_MATERIAL,
          what(element) + " is of steel and of something else.");
    }
    if (properties.hasSeveralQuantitySets()) {
      for (String q : properties.contradictions(CHECKED_QUANTITIES)) {
        say(
            element,
            ModelFinding.CONTRADICTORY_QUANTITY,
            what(element) + " has two values for " + q + ".");
      }
    }
  }

  private static String what(Entity element) {
    return element.kind() + " '" + element.text("Name") + "'";
  }

  private void say(Entity element, ModelFinding code, String sentence) {
    file.findings().add(code, element.id(), element.text("GlobalId"), sentence);
  }
}
