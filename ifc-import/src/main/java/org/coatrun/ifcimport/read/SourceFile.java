package org.coatrun.ifcimport.read;

import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.IfcModel;
import org.coatrun.ifcimport.entity.UnitReader;
import org.coatrun.ifcimport.entity.Units;
import org.coatrun.ifcimport.part21.ModelFileException;
import org.coatrun.ifcimport.part21.StepFile;
import org.coatrun.ifcimport.schema.Schema;
import org.coatrun.ifcimport.schema.SchemaVersion;
import org.coatrun.ifcimport.shape.Origin;
import org.coatrun.ifcimport.shape.Shapes;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.ModelFile;

/** One open file with all that its readers share. */
final class SourceFile {

  private final int number;
  private final IfcModel model;
  private final String schemaName;
  private final Units units;
  private final FindingSink findings;
  private final PropertyNames propertyNames;
  private final Relations relations;
  private final Materials materials;
  private final Shapes shapes;

  SourceFile(int number, StepFile step, Origin origin, Workers workers) {
    this.number = number;
    this.schemaName =
        step.header().schemas().isEmpty() ? "" : step.header().schemas().get(0).trim();
    SchemaVersion version =
        SchemaVersion.nearest(schemaName)
            .orElseThrow(() -> new ModelFileException(unknownSchema(step.fileName())));
    this.model = new IfcModel(step, Schema.of(version));
    this.findings = new FindingSink(step);
    this.units = UnitReader.read(model);
    this.propertyNames = new PropertyNames(model, workers);
    this.relations = new Relations(model, findings, workers);
    this.materials = new Materials(model, units.length(), findings);
    this.shapes = new Shapes(model, units, origin);
    sayWhatIsOdd(version);
  }

  private String unknownSchema(String name) {
    return schemaName.isEmpty()
        ? name + " does not say which schema it follows; export it again as IFC2X3, IFC4 or IFC4X3."
        : name
            + " follows the schema '"
            + schemaName
            + "', which is no IFC schema that is read; export it as IFC2X3, IFC4 or IFC4X3.";
  }

  private void sayWhatIsOdd(SchemaVersion version) {
    if (!schemaName.equalsIgnoreCase(version.name())) {
      findings.add(
          ModelFinding.NEAREST_SCHEMA, 0, "", schemaName + " was read as " + version.name() + ".");
    }
    if (!units.lengthKnown()) {
      findings.add(ModelFinding.NO_LENGTH_UNIT, 0, "", "No unit of length; metres were assumed.");
    }
    units.faults().forEach(f -> findings.add(ModelFinding.UNKNOWN_UNIT, 0, "", f));
    model.file().entityNames().forEach(name -> sayOfEntity(name, version));
    for (long id : model.idsOf("IfcLinearPlacement")) {
      findings.add(
          ModelFinding.LINEAR_PLACEMENT,
          id,
          "",
          "#" + id + " places something along an alignment.");
    }
  }

  private void sayOfEntity(String name, SchemaVersion version) {
    if (model.schema().type(name).isEmpty()) {
      boolean complex = name.indexOf('+') >= 0; // the file's reader has said so
      if (!complex && !Schema.isStandard(name)) {
        long[] ids = model.file().idsOf(name);
        String sentence = ids.length + " × " + name + ", which no schema defines that is read.";
        findings.add(ModelFinding.UNKNOWN_ENTITY, ids[0], "", sentence);
      }
    } else if (!model.schema().defines(name)) {
      findings.add(
          ModelFinding.OTHER_SCHEMA_ENTITY,
          0,
          "",
          name + " does not belong to " + version.name() + ".");
    }
  }

  /** Says of each kind of record met so far that is longer or shorter than its schema has it. */
  void sayOfSizes() {
    model
        .wrongSizes()
        .forEach(
            (kind, id) -> {
              Entity record = model.get(id);
              findings.add(
                  ModelFinding.WRONG_SIZE,
                  id,
                  "",
                  String.format(
                      "#%d is the first %s that has %d attributes where %s has %d.",
                      id,
                      kind,
                      record.size(),
                      model.schema().version(),
                      record.type().attributes().size()));
            });
  }

  ModelFile describe() {
    String application = model.file().header().originatingSystem();
    return new ModelFile(
        model.file().fileName(),
        schemaName,
        model.schema().version().name(),
        units.lengthName(),
        model.file().count(),
        application);
  }

  int number() {
    return number;
  }

  IfcModel model() {
    return model;
  }

  Units units() {
    return units;
  }

  FindingSink findings() {
    return findings;
  }

  PropertyNames propertyNames() {
    return propertyNames;
  }

  Relations relations() {
    return relations;
  }

  Materials materials() {
    return materials;
  }

  Shapes shapes() {
    return shapes;
  }
}
