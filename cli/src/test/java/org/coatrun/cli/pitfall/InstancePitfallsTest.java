package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Status;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.LedgerFinding;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Instances, wholes and doubles: faults 26 to 33 of the list in {@link PitfallListTest}. */
class InstancePitfallsTest {

  private static final double EXACT = 1e-9;

  /** The faces along a bar of 100 by 50 mm and a metre. */
  private static final double SIDES = 2 * (0.1 + 0.05);

  private static final String STOREY =
      "#300=IFCBUILDINGSTOREY('0000000000000000000300',$,'Level 2',$,$,$,$,$,.ELEMENT.,4000.);\n";

  @TempDir Path folder;

  /** Fault 26: the beam before and after its cut, one on the other; the cut one counts. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aBeamThatStandsTwiceCountsOnceAsItIsCut(String schema) throws IOException {
    Takeoff takeoff =
        new Sketch(schema)
            .bar(102, 1000)
            .add(
                """
                #104=IFCCARTESIANPOINT((0.,0.,900.));
                #105=IFCAXIS2PLACEMENT3D(#104,$,$);
                #106=IFCPLANE(#105);
                #107=IFCHALFSPACESOLID(#106,.F.);
                #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#102,#107);
                """)
            .steel(200, 102)
            .steel(220, 100)
            .takeoff(folder);
    assertThat(Sketch.line(takeoff, 200).outcome().status()).isEqualTo(Status.LEFT_OUT);
    assertThat(Sketch.line(takeoff, 220).outcome().status()).isEqualTo(Status.COUNTED);
    assertThat(takeoff.memberTotals().exposed().squareMetres())
        .isCloseTo(0.9 * SIDES, within(EXACT));
    assertThat(takeoff.findings()).anyMatch(f -> f.code() == LedgerFinding.DOUBLED);
  }

  /** Fault 27: an assembly in an assembly, neither with a body of its own. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void partsOfAssembliesCountInTheStoreyOfTheWhole(String schema) throws IOException {
    Takeoff takeoff =
        new Sketch(schema)
            .bar(100, 1000)
            .steel(200, 100)
            .add(STOREY)
            .add(
                """
                #310=IFCELEMENTASSEMBLY('0000000000000000000310',$,'truss',$,$,#16,$,$,$,.TRUSS.);
                #311=IFCELEMENTASSEMBLY('0000000000000000000311',$,'chord',$,$,#16,$,$,$,.TRUSS.);
                #312=IFCRELCONTAINEDINSPATIALSTRUCTURE('0000000000000000000312',$,$,$,(#310),#300);
                #313=IFCRELAGGREGATES('0000000000000000000313',$,$,$,#310,(#311));
                #314=IFCRELAGGREGATES('0000000000000000000314',$,$,$,#311,(#200));
                """)
            .takeoff(folder);
    assertThat(takeoff.members()).hasSize(1);
    MemberLine line = takeoff.members().get(0);
    assertThat(line.storey().orElseThrow().name()).isEqualTo("Level 2");
    assertThat(line.identity().assembly().orElseThrow().step()).isEqualTo(311);
    assertThat(takeoff.memberTotals().exposed().squareMetres()).isCloseTo(SIDES, within(EXACT));
  }

  /** Fault 27: a whole drawn beside its parts is not counted with them. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void noPartIsCountedWithItsWhole(String schema) throws IOException {
    Takeoff takeoff =
        new Sketch(schema)
            .bar(100, 1000)
            .steel(200, 100)
            .steel(220, 100)
            .add("#314=IFCRELAGGREGATES('0000000000000000000314',$,$,$,#220,(#200));\n")
            .takeoff(folder);
    assertThat(takeoff.memberTotals().exposed().squareMetres()).isCloseTo(SIDES, within(EXACT));
    assertThat(takeoff.memberTotals().counted()).isEqualTo(1);
    assertThat(takeoff.findings()).anyMatch(f -> f.code() == ModelFinding.WHOLE_AND_PARTS);
  }

  /** Fault 28: three placements, each turned by a right angle and a metre along its own x. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void theWholeChainOfPlacementsCounts(String schema) throws IOException {
    Member m =
        new Sketch(schema)
            .bar(100, 1000)
            .add(
                """
                #20=IFCCARTESIANPOINT((1000.,0.,0.));
                #21=IFCDIRECTION((0.,1.,0.));
                #22=IFCAXIS2PLACEMENT3D(#20,#11,#21);
                #23=IFCLOCALPLACEMENT($,#22);
                #24=IFCLOCALPLACEMENT(#23,#22);
                #25=IFCLOCALPLACEMENT(#24,#22);
                """)
            .member(200, 100, 25)
            .read(folder)
            .members()
            .get(0);
    // 1 along x, then 1 along y, then 1 against x
    requireNear(m.body().placement().origin(), new Vec3(0, 1, 0));
    requireNear(m.body().placement().x(), new Vec3(0, -1, 0));
  }

  /** Fault 28: axis A along y at x = 3 m, axis 1 along x at y = 2 m; 100 mm aside of A. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void aGridPlacementStandsWhereItsAxesCross(String schema) throws IOException {
    String before = schema.equals("IFC4X3") ? "$," : "";
    Sketch sketch = new Sketch(schema);
    sketch
        .bar(100, 1000)
        .add(
            """
            #20=IFCCARTESIANPOINT((3000.,0.));
            #21=IFCCARTESIANPOINT((3000.,9000.));
            #22=IFCPOLYLINE((#20,#21));
            #23=IFCGRIDAXIS('A',#22,.T.);
            #24=IFCCARTESIANPOINT((0.,2000.));
            #25=IFCCARTESIANPOINT((9000.,2000.));
            #26=IFCPOLYLINE((#24,#25));
            #27=IFCGRIDAXIS('1',#26,.T.);
            #28=IFCVIRTUALGRIDINTERSECTION((#23,#27),(100.,0.,500.));
            """)
        .add("#29=IFCGRIDPLACEMENT(" + before + "#28,$);\n")
        .add(
            "#30=IFCGRID(%s,$,$,$,#16,$,(#23),(#27),$%s);\n"
                .formatted(sketch.root(), sketch.newer(",$")))
        .member(200, 100, 29);
    Member m = sketch.read(folder).members().get(0);
    // left of an axis that runs along y is towards smaller x
    requireNear(m.body().placement().origin(), new Vec3(2.9, 2, 0.5));
  }

  private static void requireNear(Vec3 found, Vec3 expected) {
    assertThat(found.minus(expected).length()).isLessThan(EXACT);
  }

  /** Fault 29: axis, box, footprint and a second, coarser body beside the one that counts. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void onlyTheBodyIsMeasuredWhateverItsContext(String schema) throws IOException {
    for (String context : List.of("#9", "#31", "$")) {
      Sketch sketch =
          new Sketch(schema)
              .bar(100, 1000)
              .add(
                  """
                  #31=IFCGEOMETRICREPRESENTATIONSUBCONTEXT('Body','Model',*,*,*,*,#9,$,.MODEL_VIEW.,$);
                  #32=IFCCARTESIANPOINT((0.,0.,5000.));
                  #33=IFCPOLYLINE((#10,#32));
                  #34=IFCSHAPEREPRESENTATION(#9,'Axis','Curve3D',(#33));
                  #35=IFCBOUNDINGBOX(#10,9000.,9000.,9000.);
                  #36=IFCSHAPEREPRESENTATION(#9,'Box','BoundingBox',(#35));
                  #37=IFCSHAPEREPRESENTATION(#9,'FootPrint','Curve2D',(#33));
                  #38=IFCBLOCK(#13,9000.,9000.,9000.);
                  #39=IFCSHAPEREPRESENTATION(#9,'Clearance','CSG',(#38));
                  """)
              .add("#40=IFCSHAPEREPRESENTATION(" + context + ",'Body','SweptSolid',(#100));\n")
              .add("#41=IFCPRODUCTDEFINITIONSHAPE($,$,(#34,#36,#39,#37,#40));\n");
      sketch.add(
          "#200=IFCMEMBER(%s,'M',$,$,#16,#41,$%s);\n".formatted(sketch.root(), sketch.newer(",$")));
      assertThat(sketch.material(200, "Steel").only(folder).ledger().exposed().squareMetres())
          .isCloseTo(SIDES, within(EXACT));
    }
  }

  /** Fault 30: one length in two sets stands for itself; two that differ stand for nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void quantitiesThatStandTwiceAreNeverSummed(String schema) throws IOException {
    Building same = twoLengths(schema, "2500.").read(folder);
    assertThat(same.members().get(0).properties().quantity("Length")).hasValue(2.5);
    assertThat(same.findings()).noneMatch(f -> f.code() == ModelFinding.CONTRADICTORY_QUANTITY);

    Takeoff differ = twoLengths(schema, "2600.").takeoff(folder);
    assertThat(differ.building().members().get(0).properties().quantity("Length")).isEmpty();
    assertThat(differ.findings()).anyMatch(f -> f.code() == ModelFinding.CONTRADICTORY_QUANTITY);
    assertThat(differ.memberTotals().exposed().squareMetres()).isCloseTo(SIDES, within(EXACT));
  }

  private static Sketch twoLengths(String schema, String second) {
    Sketch sketch = new Sketch(schema).bar(100, 1000).steel(200, 100);
    String more = sketch.newer(",$");
    return sketch
        .add("#400=IFCQUANTITYLENGTH('Length',$,$,2500.%s);\n".formatted(more))
        .add("#401=IFCQUANTITYLENGTH('Length',$,$,%s%s);\n".formatted(second, more))
        .add(
            """
            #402=IFCELEMENTQUANTITY('0000000000000000000402',$,'BaseQuantities',$,$,(#400));
            #403=IFCELEMENTQUANTITY('0000000000000000000403',$,'Qto_MemberBaseQuantities',$,$,(#401));
            #404=IFCRELDEFINESBYPROPERTIES('0000000000000000000404',$,$,$,(#200),#402);
            #405=IFCRELDEFINESBYPROPERTIES('0000000000000000000405',$,$,$,(#200),#403);
            """);
  }

  /** Fault 31: a floor whose layers are parts, and floors that only a name or a layer call deck. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void deckIsFoundByPartNameAndLayer(String schema) throws IOException {
    Sketch sketch = new Sketch(schema).bar(100, 150);
    String type = sketch.newer(",$");
    sketch
        .shape(410, 100)
        .shape(420, 100)
        .shape(430, 100)
        .shape(440, 100)
        .shape(450, 100)
        .add("#400=IFCSLAB(%s,'floor',$,$,#16,$,$,.FLOOR.);\n".formatted(sketch.root()))
        .add(
            "#401=IFCBUILDINGELEMENTPART(%s,'Metal deck',$,$,#16,#410,$%s);\n"
                .formatted(sketch.root(), type))
        .add(
            "#402=IFCBUILDINGELEMENTPART(%s,'topping',$,$,#16,#420,$%s);\n"
                .formatted(sketch.root(), type))
        .add("#403=IFCRELAGGREGATES(%s,$,$,#400,(#401,#402));\n".formatted(sketch.root()))
        .add(
            "#404=IFCSLAB(%s,'3 in. composite deck',$,$,#16,#430,$,.FLOOR.);\n"
                .formatted(sketch.root()))
        .add("#405=IFCSLAB(%s,'S-2',$,$,#16,#440,$,.FLOOR.);\n".formatted(sketch.root()))
        .add("#406=IFCSLAB(%s,'S-3',$,$,#16,#450,$,.FLOOR.);\n".formatted(sketch.root()))
        .add("#460=IFCMATERIAL('Concrete C30'%s);\n".formatted(sketch.newer(",$,$")))
        .add("#461=IFCMATERIAL('Steel deck 76 mm'%s);\n".formatted(sketch.newer(",$,$")))
        .add("#462=IFCMATERIALLAYER(#460,74.,$%s);\n".formatted(sketch.newer(",$,$,$,$")))
        .add("#463=IFCMATERIALLAYER(#461,76.,$%s);\n".formatted(sketch.newer(",$,$,$,$")))
        .add("#464=IFCMATERIALLAYERSET((#462,#463),'floor'%s);\n".formatted(type))
        .add("#465=IFCRELASSOCIATESMATERIAL(%s,$,$,(#405),#464);\n".formatted(sketch.root()))
        .add("#466=IFCRELASSOCIATESMATERIAL(%s,$,$,(#406),#460);\n".formatted(sketch.root()));
    Building b = sketch.read(folder);
    assertThat(b.decks())
        .extracting(d -> d.id().step())
        .containsExactlyInAnyOrder(401L, 404L, 405L);
    assertThat(b.decks())
        .filteredOn(d -> d.id().step() == 405)
        .extracting(Deck::form)
        .containsExactly(Deck.Form.SLAB_ON_DECK);
    assertThat(b.slabs()).extracting(s -> s.id().step()).containsExactlyInAnyOrder(402L, 406L);
  }

  /**
   * Fault 32: chosen by profile, material or name whatever the class, and what is not is listed.
   */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void steelCountsWhateverItsClassAndTheRestIsListed(String schema) throws IOException {
    Sketch sketch = new Sketch(schema).bar(100, 1000);
    sketch
        .add(
            "#110=IFCISHAPEPROFILEDEF(.AREA.,$,#15,100.,200.,6.,9.,12.%s);\n"
                .formatted(sketch.newer(",$,$")))
        .swept(111, 110, 1000)
        .shape(400, 111)
        .shape(402, 100)
        .shape(404, 100)
        .add(
            "#410=IFCBUILDINGELEMENTPROXY(%s,'thing',$,$,#16,#400,$,$);\n".formatted(sketch.root()))
        .add(
            "#411=IFCBUILDINGELEMENTPROXY(%s,'crate',$,$,#16,#402,$,$);\n".formatted(sketch.root()))
        .add(
            "#412=IFCPLATE(%s,'P1',$,$,#16,#404,$%s);\n"
                .formatted(sketch.root(), sketch.newer(",$")))
        .material(412, "S355")
        .member(430, 100)
        .material(430, "Glulam GL24h");
    Takeoff takeoff = sketch.takeoff(folder);
    assertThat(takeoff.members()).hasSize(3);
    assertThat(Sketch.line(takeoff, 410).outcome().status()).isEqualTo(Status.COUNTED);
    assertThat(Sketch.line(takeoff, 412).outcome().status()).isEqualTo(Status.COUNTED);
    assertThat(Sketch.line(takeoff, 430).outcome().status()).isEqualTo(Status.LEFT_OUT);
    assertThat(Sketch.line(takeoff, 430).outcome().reason()).contains("Glulam GL24h");
    assertThat(takeoff.findings())
        .anyMatch(
            f ->
                f.code() == ModelFinding.NOT_LOOKED_AT
                    && f.sentence().startsWith("1 × IfcBuildingElementProxy"));
  }

  /** Fault 33: known by file and number, so that both of a double and an ill-formed one count. */
  @ParameterizedTest
  @ValueSource(strings = {"IFC2X3", "IFC4", "IFC4X3"})
  void doubledAndIllFormedGlobalIdsLoseNoMember(String schema) throws IOException {
    Sketch sketch = new Sketch(schema).bar(100, 1000).bar(102, 1100).bar(104, 1300);
    String end = sketch.newer(",$");
    sketch.shape(400, 100).shape(402, 102).shape(404, 104);
    for (int i = 0; i < 3; i++) {
      String guid = i < 2 ? "0000000000000000000777" : "no GlobalId";
      sketch
          .add(
              "#%d=IFCMEMBER('%s',$,'M%d',$,$,#16,#%d,$%s);\n"
                  .formatted(410 + i, guid, i, 400 + 2 * i, end))
          .material(410 + i + 10 * i, "Steel");
    }
    Building b = sketch.read(folder);
    assertThat(b.members()).extracting(m -> m.id().step()).containsExactly(410L, 411L, 412L);
    assertThat(b.findings()).filteredOn(f -> f.code() == ModelFinding.DOUBLE_GUID).hasSize(1);
    assertThat(b.findings()).filteredOn(f -> f.code() == ModelFinding.MALFORMED_GUID).hasSize(1);
  }
}
