package org.coatrun.ifcimport.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The tables of attributes against the standard's own EXPRESS texts: IFC2X3 TC1, IFC4 ADD2 and
 * IFC4X3 ADD2 (ISO 16739).
 */
class SchemaTablesTest {

  @ParameterizedTest
  @EnumSource(SchemaVersion.class)
  void eachEntityHasTheAttributesAndKindsOfTheStandard(SchemaVersion version) throws IOException {
    ExpressSchema standard = ExpressSchema.read(version);
    EntityTable table = EntityTable.read().get(version);
    List<EntityType> types = table.names().stream().map(table::type).toList();
    assertThat(types).hasSizeGreaterThan(250);
    List<String> names = types.stream().map(EntityType::name).toList();
    for (EntityType type : types) {
      assertThat(standard.has(type.name())).as(type.name()).isTrue();
      assertThat(type.attributes()).as(type.name()).isEqualTo(standard.attributes(type.name()));
      List<String> kinds = standard.kinds(type.name());
      for (String name : names) {
        assertThat(type.isA(name)).as(type + " is a " + name).isEqualTo(kinds.contains(name));
      }
    }
  }

  /** Those of its own schema, and what only a neighbour defines. */
  @ParameterizedTest
  @EnumSource(SchemaVersion.class)
  void theKindsOfAnEntityAreAllThatAreOne(SchemaVersion version) {
    Schema schema = Schema.of(version);
    var all = new TreeSet<String>();
    EntityTable.read().values().forEach(table -> all.addAll(table.names()));
    for (String name : all) {
      EntityType type = schema.type(name).orElseThrow();
      assertThat(schema.kindsOf(type.name()))
          .as("kinds of " + type)
          .isEqualTo(
              all.stream().filter(n -> schema.type(n).orElseThrow().isA(type.name())).toList());
    }
  }

  /** A kind of profile, body, curve, placement or element left out would be steel unseen. */
  @ParameterizedTest
  @EnumSource(SchemaVersion.class)
  void noKindOfWhatMattersIsLeftOut(SchemaVersion version) throws IOException {
    ExpressSchema standard = ExpressSchema.read(version);
    var table = EntityTable.read().get(version);
    List<String> matter =
        List.of(
            "IfcProfileDef",
            "IfcSolidModel",
            "IfcBooleanResult",
            "IfcObjectPlacement",
            "IfcBeam",
            "IfcColumn",
            "IfcMember",
            "IfcPlate",
            "IfcSlab",
            "IfcWall",
            "IfcElementComponent",
            "IfcElementAssembly",
            "IfcMaterialDefinition",
            "IfcMaterialUsageDefinition",
            "IfcUnit",
            "IfcNamedUnit");
    List<String> missing =
        standard.names().stream()
            .filter(n -> standard.kinds(n).stream().anyMatch(matter::contains))
            .filter(n -> !table.has(n.toUpperCase(Locale.ROOT)))
            .toList();
    assertThat(missing).isEmpty();
  }

  @Test
  void knowsTheNamesOfAllEntities() throws IOException {
    var names = new TreeSet<String>();
    for (SchemaVersion version : SchemaVersion.values()) {
      names.addAll(ExpressSchema.read(version).names());
    }
    assertThat(EntityNames.read())
        .isEqualTo(names.stream().map(n -> n.toUpperCase(Locale.ROOT)).collect(Collectors.toSet()));
    assertThat(Schema.isStandard("IFCWINDOWSTYLE")).isTrue();
    assertThat(Schema.isStandard("IFCSTEELTHING")).isFalse();
  }
}
