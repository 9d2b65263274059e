package org.coatrun.shared.bid.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

class MaterialOrderTest {

  private static MaterialOrder order(String text, RatedLine... lines) {
    Job job = Job.parse("job.yaml", text);
    List<RatedLine> all = List.of(lines);
    MaterialBill bill = MaterialBill.of(all, job, FloorOrder.of(List.of(), List.of(), all));
    return MaterialOrder.of(bill.total(), job.material());
  }

  /**
   * Hand: 44,000 bf of beams at 1 in, 12 % lost, bags of 50 lb that give 50 x 12 / 15 = 40 bf
   * (common practice): 44,000 / 0.88 / 40 = 1,250 bags, 62,500 lb, 32 pallets of 40, two trucks of
   * 880 bags, 32 x 25 ft2 of floor, 62,500 x 1.2 / 8.34 gal of water; in place 3,666.67 ft3 x 15
   * pcf = 55,000 lb.
   */
  @Test
  void aJobByHand() {
    MaterialOrder order = order("", Rated.line().area(44_000).member());
    assertThat(order.theoreticalYield().boardFeet()).isCloseTo(40, within(1e-9));
    assertThat(order.adjustedYield().boardFeet()).isCloseTo(35.2, within(1e-6));
    assertThat(order.exactBags()).isCloseTo(1250, within(1e-6));
    assertThat(order.bags()).isEqualTo(1250);
    assertThat(order.pallets()).isEqualTo(32);
    assertThat(order.truckloads()).isEqualTo(2);
    assertThat(order.ordered().pounds()).isCloseTo(62_500, within(1e-6));
    assertThat(order.dry().pounds()).isCloseTo(55_000, within(1e-3));
    assertThat(order.storage().squareFeet()).isCloseTo(800, within(1e-6));
    assertThat(order.water().usGallons()).isCloseTo(8992.806, within(1e-3));
  }

  @Test
  void aBagBegunIsABag() {
    assertThat(order("", Rated.line().area(44_001).member()).bags()).isEqualTo(1251);
    assertThat(order("").bags()).isZero();
    assertThat(order("").adjustedYield()).isEqualTo(order("").theoreticalYield());
  }

  /** 300 ft2 a gallon (common practice): 1,000 ft2 take 3.33 gal, 4 whole. */
  @Test
  void bondingCoatComesInWholeGallons() {
    MaterialSum sum =
        new MaterialSum(
            1,
            Area.ZERO,
            Volume.ZERO,
            Volume.ZERO,
            Volume.ZERO,
            Volume.ZERO,
            Volume.ZERO,
            Area.ofSquareFeet(1000));
    MaterialOrder order = MaterialOrder.of(sum, Job.defaults().material());
    assertThat(order.bondingGallons()).isCloseTo(3.3333, within(1e-4));
    assertThat(order.wholeBondingGallons()).isEqualTo(4);
  }

  @Test
  void trucksCarryWholePallets() {
    assertThat(packing("truckload: '44,000 lb'")).isEqualTo(new Packing(40, 22));
    assertThat(packing("truckload: '5,999 lb'")).isEqualTo(new Packing(40, 2));
    // A truck that does not carry one full pallet brings a smaller one.
    assertThat(packing("truckload: '1,000 lb'")).isEqualTo(new Packing(20, 1));
  }

  private static Packing packing(String truck) {
    return Packing.of(Job.parse("job.yaml", "material: {" + truck + "}").material());
  }

  @Test
  void roomsTakeWholeStacks() {
    Job job = Job.parse("job.yaml", "material: {pallet-area: 20 ft2, pallets-high: 2}");
    assertThat(Packing.room(Area.ofSquareFeet(119), job.material())).isEqualTo(10);
    assertThat(Packing.room(Area.ofSquareFeet(120), job.material())).isEqualTo(12);
    assertThat(Packing.room(Area.ofSquareFeet(19), job.material())).isZero();
  }
}
