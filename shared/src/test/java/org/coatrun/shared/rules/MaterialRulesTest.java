package org.coatrun.shared.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialRulesTest {

  private static final Mass BAG = Mass.ofPounds(50);

  /** The trade's own sum: 50 lb x 12 / 15 pcf = 40 board feet (common practice). */
  @Test
  void aFiftyPoundBagAtFifteenPcfGivesFortyBoardFeet() {
    assertThat(Bags.theoreticalYield(BAG, Density.ofPoundsPerCubicFoot(15)).boardFeet())
        .isCloseTo(40, within(1e-9));
    assertThat(
            Bags.adjustedYield(BAG, Density.ofPoundsPerCubicFoot(15), Share.ofPercent(10))
                .boardFeet())
        .isCloseTo(36, within(1e-9));
  }

  @Test
  void aBoardFootIsOneSquareFootByOneInch() {
    assertThat(CoatVolume.byArea(Area.ofSquareFeet(1), Length.ofInches(1)).boardFeet())
        .isCloseTo(1, within(1e-12));
  }

  /** Hand: the offset of a 4 by 4 in box by 1 in with rounded corners is 16 x 1 + pi x 1. */
  @Test
  void offsetsOfConvexContoursFollowSteiner() {
    double k = CoatVolume.cornerFactor(Collections.nCopies(4, Math.PI / 2));
    assertThat(k).isCloseTo(CoatVolume.cornerFactorConvex(), within(1e-12));
    assertThat(CoatVolume.offset(Length.ofInches(16), k, Length.ofInches(1)).squareInches())
        .isCloseTo(16 + Math.PI, within(1e-9));
  }

  /** Hand: inside an L of two strips 1 in thick, the shared square is counted once. */
  @Test
  void concaveCornersSaveWhatTwoStripsShare() {
    double k = CoatVolume.cornerFactor(List.of(-Math.PI / 2));
    assertThat(CoatVolume.offset(Length.ofInches(8), k, Length.ofInches(1)).squareInches())
        .isCloseTo(8 - 1, within(1e-9));
  }

  @Test
  void cornersOfAWShapeAddUp() {
    List<Double> turns =
        List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, -1.0, -1.0, -1.0, -1.0).stream()
            .map(t -> t * Math.PI / 2)
            .toList();
    assertThat(CoatVolume.cornerFactor(turns))
        .isCloseTo(CoatVolume.cornerFactorFourSided(), within(1e-12));
    assertThat(CoatVolume.cornerFactor(turns.subList(2, 12)))
        .isCloseTo(CoatVolume.cornerFactorThreeSided(), within(1e-12));
  }

  @Test
  void wasteIsWhatIsSprayedAndDoesNotStay() {
    assertThat(Bags.withWaste(Volume.ofBoardFeet(90), Share.ofPercent(10)).boardFeet())
        .isCloseTo(100, within(1e-9));
    assertThatThrownBy(() -> Bags.withWaste(Volume.ofBoardFeet(90), Share.ofPercent(100)))
        .hasMessage("waste must be from 0 % to under 100 %");
  }

  @Test
  void packsAreWhole() {
    assertThat(Bags.whole(12.0000000001)).isEqualTo(12);
    assertThat(Bags.whole(12.01)).isEqualTo(13);
    assertThat(Bags.packs(121, 40)).isEqualTo(4);
    assertThat(Bags.packs(120, 40)).isEqualTo(3);
    assertThat(Bags.storage(5, Area.ofSquareFeet(20), 2).squareFeet()).isCloseTo(60, within(1e-9));
  }

  /** bags/h = gal/min x 60 x 8.34 / (1.2 x bag lb): 5 gal/min and 50 lb give 41.7. */
  @Test
  void aMeasuredFlowSupportsABagRate() {
    assertThat(MixingWater.bagsPerHour(FlowRate.ofGallonsPerMinute(5), 1.2, BAG))
        .isCloseTo(41.7, within(1e-9));
    assertThat(MixingWater.forBagRate(41.7, 1.2, BAG).gallonsPerMinute())
        .isCloseTo(5, within(1e-9));
  }

  /** 1.2 lb of water a pound: 1,000 lb take 1,200 lb, 143.88 gal at 8.34 lb. */
  @Test
  void waterGoesByWeight() {
    assertThat(MixingWater.forDry(Mass.ofPounds(1000), 1.2).usGallons())
        .isCloseTo(143.8849, within(1e-4));
  }

  /** Hand: 11.5 in deep in a pail of 12 in after a minute is 1300.6 in3, 5.630 gal (231 in3). */
  @ParameterizedTest(name = "{0} in deep, {1} in wide, {2} s: {3} gal/min")
  @CsvSource({"11.5, 12, 60, 5.6304", "11.5, 12, 30, 11.2608", "9, 10.25, 60, 3.2148"})
  void aPailTellsTheFlow(double depth, double diameter, double seconds, double gallons) {
    assertThat(
            MixingWater.pail(Length.ofInches(depth), Length.ofInches(diameter), seconds)
                .gallonsPerMinute())
        .isCloseTo(gallons, within(0.0005));
  }

  @Test
  void bondingCoatsGoOnGalvanisedRoofDeckAndCellularDeck() {
    assertThat(BondingCoat.needed(true, false, false)).isTrue();
    assertThat(BondingCoat.needed(true, false, true)).isFalse();
    assertThat(BondingCoat.needed(true, true, true)).isTrue();
    assertThat(BondingCoat.needed(false, true, false)).isFalse();
  }

  /** Exact geometry on dimensions of generic decks (from memory); composite 3 in: web 3.25 in. */
  @ParameterizedTest(name = "{0}: {5}")
  @CsvSource({
    "composite 3 in, 3, 12, 7.25, 4.75, 1.3333",
    "composite 2 in, 2, 12, 7, 5, 1.2060",
    "3N, 3, 8, 2.625, 1.875, 1.6621"
  })
  void decksUnfold(
      String deck, double depth, double pitch, double top, double bottom, double factor) {
    DeckGeometry geometry =
        new DeckGeometry(
            Length.ofInches(depth),
            Length.ofInches(pitch),
            Length.ofInches(top),
            Length.ofInches(bottom));
    assertThat(geometry.areaFactor()).as(deck).isCloseTo(factor, within(0.0001));
  }
}
