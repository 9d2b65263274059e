package org.coatrun.ifcimport.read;

import java.util.function.Consumer;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;

/** Who belongs to whom in one file, read once. */
final class Relations {

  private final IfcModel model;
  private final FindingSink findings;

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

  Relations(IfcModel model, FindingSink findings) {
    this.model = model;
    this.findings = findings;
    many("IfcRelContainedInSpatialStructure", "RelatedElements", "RelatingStructure", structureOf);
    parts("IfcRelAggregates");
    parts("IfcRelNests");
    many("IfcRelDefinesByType", "RelatedObjects", "RelatingType", typeOf);
    many("IfcRelAssociatesMaterial", "RelatedObjects", "RelatingMaterial", materialOf);
    one("IfcRelVoidsElement", "RelatedOpeningElement", "RelatingBuildingElement", hostOf);
    one("IfcRelFillsElement", "RelatingOpeningElement", "RelatedBuildingElement", fillOf);
    one("IfcRelFillsElement", "RelatedBuildingElement", "RelatingOpeningElement", openingOf);
    properties();
    many(
        "IfcRelAssociatesProfileProperties",
        "RelatedObjects",
        "RelatingProfileProperties",
        profilePropertiesOf);
  }

  private void each(String kind, Consumer<Entity> work) {
    for (long id : model.idsOf(kind)) {
      try {
        work.accept(model.get(id));
      } catch (BrokenRecordException e) {
        findings.broken(e);
      }
    }
  }

  private void many(String kind, String related, String relating, LongMultimap into) {
    each(
        kind,
        r -> {
          long to = r.refId(relating).orElseThrow(() -> r.broken(relating + " is missing"));
          for (long from : r.refIds(related)) {
            into.put(from, to);
          }
        });
  }

  private void one(String kind, String key, String value, LongMultimap into) {
    each(
        kind,
        r ->
            into.put(
                r.refId(key).orElseThrow(() -> r.broken(key + " is missing")),
                r.refId(value).orElseThrow(() -> r.broken(value + " is missing"))));
  }

  private void parts(String kind) {
    each(
        kind,
        r -> {
          long whole =
              r.refId("RelatingObject").orElseThrow(() -> r.broken("RelatingObject is missing"));
          for (long part : r.refIds("RelatedObjects")) {
            wholeOf.put(part, whole);
            partsOf.put(whole, part);
          }
        });
  }

  /** A definition may be one set or, in the newer schemas, a typed list of sets. */
  private void properties() {
    each(
        "IfcRelDefinesByProperties",
        r -> {
          long[] several = r.refIds("RelatingPropertyDefinition");
          long[] sets =
              several.length > 0
                  ? several
                  : r.refId("RelatingPropertyDefinition").stream().toArray();
          for (long from : r.refIds("RelatedObjects")) {
            for (long set : sets) {
              propertiesOf.put(from, set);
            }
          }
        });
  }
}
