package org.coatrun.ifcimport.read;

import java.util.OptionalLong;
import java.util.function.Function;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;
import org.coatrun.shared.finding.FileFinding;

/** Who belongs to whom in one file, read once. */
final class Relations {

  private final IfcModel model;
  private final FindingSink findings;
  private final Workers workers;

  final LongMultimap structureOf = new LongMultimap();
  final LongMultimap wholeOf = new LongMultimap();
  final LongMultimap partsOf = new LongMultimap();
  final LongMultimap typeOf = new LongMultimap();
  final LongMultimap materialOf = new LongMultimap();
  final LongMultimap hostOf = new LongMultimap();
  final LongMultimap fillOf = new LongMultimap();
  final LongMultimap openingOf = new LongMultimap();
  final LongMultimap propertiesOf = new LongMultimap();
  final LongMultimap profilePropertiesOf = new LongMultimap();

  Relations(IfcModel model, FindingSink findings, Workers workers) {
    this.model = model;
    this.workers = workers;
    this.findings = findings;
    workers.together(
        this::properties,
        () -> many("IfcRelAssociatesMaterial", "RelatedObjects", "RelatingMaterial", materialOf),
        () ->
            many(
                "IfcRelContainedInSpatialStructure",
                "RelatedElements",
                "RelatingStructure",
                structureOf),
        () -> many("IfcRelDefinesByType", "RelatedObjects", "RelatingType", typeOf),
        () -> {
          parts("IfcRelAggregates");
          parts("IfcRelNests");
        },
        this::openings,
        () ->
            many(
                "IfcRelAssociatesProfileProperties",
                "RelatedObjects",
                "RelatingProfileProperties",
                profilePropertiesOf));
  }

  private void openings() {
    one("IfcRelVoidsElement", "RelatedOpeningElement", "RelatingBuildingElement", hostOf);
    one("IfcRelFillsElement", "RelatingOpeningElement", "RelatedBuildingElement", fillOf);
    one("IfcRelFillsElement", "RelatedBuildingElement", "RelatingOpeningElement", openingOf);
  }

  /** What one relation ties to what. */
  private record Links(long[] from, long[] to) {}

  /** Decodes on several threads, and files in the order of the numbers. */
  private void each(String kind, Function<Entity, Links> read, LinkSink sink) {
    for (Links links : workers.map(model.idsOf(kind), id -> links(id, read))) {
      for (long from : links.from) {
        for (long to : links.to) {
          sink.link(from, to);
        }
      }
    }
  }

  private interface LinkSink {
    void link(long from, long to);
  }

  /** Null where the relation makes no sense. */
  private Links links(long id, Function<Entity, Links> read) {
    try {
      Entity relation = model.get(id);
      Links links = read.apply(relation);
      sayOfMissing(relation, links.from);
      sayOfMissing(relation, links.to);
      return links;
    } catch (BrokenRecordException e) {
      findings.broken(e);
      return null;
    }
  }

  /** What there is stays tied: a missing one takes no other's place. */
  private void sayOfMissing(Entity relation, long[] ids) {
    for (long id : ids) {
      if (!model.file().contains(id)) {
        String sentence = relation + " refers to #" + id + ", which no record carries.";
        findings.add(FileFinding.DANGLING_REFERENCE, relation.id(), "", sentence);
      }
    }
  }

  private void many(String kind, String related, String relating, LongMultimap into) {
    each(kind, r -> new Links(r.refIds(related), needed(r, relating)), into::put);
  }

  private static long[] needed(Entity relation, String attribute) {
    OptionalLong id = relation.refId(attribute);
    if (id.isEmpty()) {
      throw relation.broken(attribute + " is missing");
    }
    return new long[] {id.getAsLong()};
  }

  private void one(String kind, String key, String value, LongMultimap into) {
    each(kind, r -> new Links(needed(r, key), needed(r, value)), into::put);
  }

  private void parts(String kind) {
    each(
        kind,
        r -> new Links(needed(r, "RelatingObject"), r.refIds("RelatedObjects")),
        (whole, part) -> {
          wholeOf.put(part, whole);
          partsOf.put(whole, part);
        });
  }

  /** A definition may be one set or, in the newer schemas, a typed list of sets. */
  private void properties() {
    each(
        "IfcRelDefinesByProperties",
        r -> {
          OptionalLong one = r.refId("RelatingPropertyDefinition");
          long[] sets =
              one.isPresent()
                  ? new long[] {one.getAsLong()}
                  : r.refIds("RelatingPropertyDefinition");
          return new Links(r.refIds("RelatedObjects"), sets);
        },
        propertiesOf::put);
  }
}
