package org.coatrun.cli.pitfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The faults that readers of steel models are known for, and which test holds each of them. */
class PitfallListTest {

  private static final Path ROOT = Path.of(System.getProperty("coatrun.root"));

  /** Number, fault, module, class and test. */
  private static final String LIST =
      """
      1  | a flush cope leaves a skin, or over-cuts a tilted member | geometry solid/GeneralCutTest noiseUnderTheTolerancesLeavesNoFilms
      1  | the same, tilted | geometry solid/GeneralCutTest turningMirroringAndScalingChangeNothing
      2  | a plane on an end face throws the member far out | geometry build/MeshAndCutTest aHalfSpaceWhosePlaneLiesOnAFaceStillCuts
      3  | a half-space does nothing when its origin lies on a face | geometry exposure/ExposureTest aHalfSpaceWithItsOriginOnTheEndFaceCutsAllTheSame
      3  | its side is that of the flag | ifc-import read/PitfallsTest letsTheAgreementFlagDecideTheSide
      3  | a bounded one is bounded across only | geometry build/MeshAndCutTest aBoundedHalfSpaceIsBoundedAcrossOnly
      4  | the second operand of a nested cut is skipped | geometry build/MeshAndCutTest nestedCutsGoAllTheWayDown
      4  | at any depth | geometry solid/LatticeCutTest treesOfAnyDepth
      5  | thin sheet is cut wrongly | cli pitfall/CutPitfallsTest thinSheetIsCutLikeAnyOtherBody
      6  | the kept part is the offcut | cli pitfall/CutPitfallsTest theFileDecidesWhichPieceStaysAndAnOffcutIsDoubted
      7  | bolt holes in some parts and not in others | geometry exposure/ExposureTest smallHolesLeaveTheCoatedAreaAlone
      8  | openings displaced off their host | cli pitfall/CutPitfallsTest anOpeningOffItsHostChangesNothingAndIsSaid
      9  | fillets ignored | geometry profile/AmericanSectionsTest wideFlangesMeasureTheTable
      9  | absent is unknown, zero is sharp | ifc-import read/PitfallsTest keepsUnknownAndSharpFilletsApart
      10 | flange slope ignored | cli pitfall/ProfilePitfallsTest aSlopedFlangeKeepsItsAreaAndChangesItsContour
      11 | flanges of an asymmetric I swapped | ifc-import read/PitfallsTest doesNotSwapTheFlangesOfAnAsymmetricI
      12 | U, L and T drawn from a corner | cli pitfall/ProfilePitfallsTest shapesOfOneCornerStandAboutTheirMiddle
      13 | the operator of a mirrored profile | ifc-import read/PitfallsTest mirrorsAboutTheUprightAxisWhateverTheOperator
      14 | the operator of a derived profile | ifc-import read/PitfallsTest keepsScaleAndReflectionOfADerivedProfile
      15 | several profiles in the material | cli pitfall/ProfilePitfallsTest ofSeveralProfilesInTheMaterialTheBodyDecides
      16 | the cardinal point applied again | cli pitfall/ProfilePitfallsTest theCardinalPointIsNotAppliedToTheBodyAgain
      17 | centre-line profiles | cli pitfall/ProfilePitfallsTest aCentreLineIsAsThickToEitherSide
      18 | cold-formed sections as outlines | cli pitfall/ProfilePitfallsTest aColdFormedSectionHasTheLengthOfItsOutline
      18 | arcs in outlines | cli pitfall/ProfilePitfallsTest arcsOfAnOutlineCountByTheirLength
      19 | degrees read as radians | ifc-import read/PitfallsTest readsRevolvedAnglesInTheUnitOfTheFile
      20 | the place and axis of a revolution | cli pitfall/SweepPitfallsTest theAxisOfARevolutionStandsInTheSolidsOwnFrame
      21 | tapered sweeps lose taper or hole | cli pitfall/SweepPitfallsTest taperedTubesKeepTheirTaperAndTheirHole
      22 | straight bars as other sweeps vanish | cli pitfall/SweepPitfallsTest straightBarsWrittenAsOtherSweepsAreMeasured
      23 | inch files off by the ratio | ifc-import read/PitfallsTest readsInchFilesByTheirUnit
      24 | models far from the origin lose precision | ifc-import read/PitfallsTest takesAFarOriginOffThePlacements
      25 | mapped items lose origin, scale or mirror | ifc-import read/PitfallsTest letsMissingScalesFollowTheFirst
      25 | areas of stretched bodies | geometry build/MeshAndCutTest aStretchedMappingRecomputesAreas
      26 | every connected beam twice | cli pitfall/InstancePitfallsTest aBeamThatStandsTwiceCountsOnceAsItIsCut
      27 | assemblies, nested or without a body | cli pitfall/InstancePitfallsTest partsOfAssembliesCountInTheStoreyOfTheWhole
      27 | a part counted with its whole | cli pitfall/InstancePitfallsTest noPartIsCountedWithItsWhole
      28 | parts jump | cli pitfall/InstancePitfallsTest theWholeChainOfPlacementsCounts
      28 | grid placements | cli pitfall/InstancePitfallsTest aGridPlacementStandsWhereItsAxesCross
      29 | which representation is the body | cli pitfall/InstancePitfallsTest onlyTheBodyIsMeasuredWhateverItsContext
      29 | of several bodies the detailed one | ifc-import read/ModelFindingsTest ofSeveralBodiesTheDetailedOneIsTakenAndSaid
      30 | quantities twice | cli pitfall/InstancePitfallsTest quantitiesThatStandTwiceAreNeverSummed
      31 | metal-deck floors | cli pitfall/InstancePitfallsTest deckIsFoundByPartNameAndLayer
      32 | steel as proxies, plates as members | cli pitfall/InstancePitfallsTest steelCountsWhateverItsClassAndTheRestIsListed
      33 | GlobalIds doubled or ill-formed | cli pitfall/InstancePitfallsTest doubledAndIllFormedGlobalIdsLoseNoMember
      34 | what an outer surface is | geometry surface/SurfaceTakeoffTest theInsideOfATubeIsApart
      35 | all normals inward | geometry build/MeshAndCutTest allNormalsInwardAndUnsharedPointsAreCured
      36 | unshared vertices | geometry build/MeshAndCutTest allNormalsInwardAndUnsharedPointsAreCured
      37 | comments | ifc-import part21/ReadersTableTest aCommentIsWhiteSpaceWhereverItStands
      37 | commented-out records | ifc-import part21/ReadersTableTest aCommentedRecordDoesNotExist
      38 | records over several lines | ifc-import part21/ReadersTableTest readsTwoRecordsOnALineAndOneOverMany
      39 | escapes | ifc-import part21/ReadersTableTest aBadEscapeSpoilsNothingBehindIt
      39 | raw high bytes | ifc-import part21/ReadersTableTest readsUtf8AByteOrderMarkAndOldPages
      """;

  static List<String> lines() {
    return LIST.lines().toList();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void eachIsHeldByATestThatThereIs(String line) throws IOException {
    String[] where = line.split("\\|")[2].trim().split(" ");
    String source =
        Files.readString(
            ROOT.resolve(where[0])
                .resolve("src/test/java/org/coatrun")
                .resolve(where[0].replace("-", ""))
                .resolve(where[1] + ".java"));
    assertThat(source).contains(" void " + where[2] + "(");
  }

  @Test
  void noNumberIsLeftOut() {
    assertThat(lines().stream().map(l -> Integer.parseInt(l.substring(0, 2).trim())).distinct())
        .containsExactlyElementsOf(IntStream.rangeClosed(1, 39).boxed().toList());
  }
}
