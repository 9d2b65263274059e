package org.coatrun.shared.bid.amounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.job.Job;
import org.junit.jupiter.api.Test;

class BidAmountsTest {

  private static final String PRICES =
      """
      prices: {bag: 18.5, bonding-gallon: 45, person-hour: 62.25, machine-day: 410,
               lift-day: 280, delivery: 350, overhead: 10 %, profit: 8 %}
      """;

  private static BidAmounts amounts(String job, List<RatedLine> lines) {
    return BidAmounts.of(lines, Job.parse("job.yaml", job), List.of(), Optional.empty());
  }

  private static List<String> codes(BidAmounts amounts) {
    return amounts.findings().stream().map(f -> f.code().code()).toList();
  }

  /**
   * Hand: 8,800 bf of beams at 30 ft. 8,800 / 35.2 = 250 bags x 18.50 = 4,625.00. Spraying 8,800 /
   * 500 x 1.5 = 26.4 h, set-up 8, patching 2.64: 37.04 crew hours x 4 = 148.16 x 62.25 = 9,222.96.
   * 37.04 / 8: 5 days x 410 = 2,050.00. Lift 26.4 / 8: 4 days x 280 = 1,120.00. One truck 350.00.
   * Cost 17,367.96; overhead 1,736.80; profit 8 % of 19,104.76 = 1,528.38; total 20,633.14.
   */
  @Test
  void moneyByHand() {
    CostSheet money =
        amounts(PRICES, List.of(Rated.line().area(8800).topFeet(30).member())).money();
    assertThat(money.items())
        .extracting(i -> i.cost().toPlainString())
        .containsExactly("4625.00", "0.00", "9222.96", "2050.00", "1120.00", "350.00");
    assertThat(money.cost()).isEqualByComparingTo("17367.96");
    assertThat(money.overhead()).isEqualByComparingTo("1736.80");
    assertThat(money.profit()).isEqualByComparingTo("1528.38");
    assertThat(money.total()).isEqualByComparingTo("20633.14");
    assertThat(money.complete()).isTrue();
    assertThat(money.lacks()).isEmpty();
  }

  @Test
  void aTotalThatLacksAPriceSaysSo() {
    BidAmounts amounts =
        amounts(
            "prices: {bag: 18.5}",
            List.of(Rated.line().member(), Rated.line().step(2).missing().member()));
    assertThat(amounts.money().complete()).isFalse();
    assertThat(amounts.money().lacks())
        .isEqualTo("no price for labour, machine and hose, deliveries; 1 element has no thickness");
    assertThat(codes(amounts)).containsExactly("F414", "F414", "F414");
    assertThat(amounts.findings().get(0).sentence())
        .isEqualTo("prices.delivery is not stated; deliveries counts as zero.");
  }

  @Test
  void heightsAndBondingCoatAreFindingsOfTheirFloor() {
    BidAmounts amounts =
        amounts(
            PRICES,
            List.of(
                Rated.line().topFeet(120).member(),
                Rated.line().step(2).topFeet(130).member(),
                Rated.line().step(3).topUnknown().member(),
                Rated.line().step(4).roof().deck()));
    assertThat(codes(amounts)).containsExactly("F410", "F411", "F412");
    assertThat(amounts.findings().get(0).sentence())
        .isEqualTo(
            "2 elements over 'Level 1' reach above the last height band of 100 ft (30.5 m); the"
                + " highest, beam M2, reaches 130 ft (39.6 m).");
    assertThat(amounts.findings().get(1).sentence())
        .isEqualTo("The height above 'Level 1' is not known of 1 element, such as beam M3.");
    assertThat(amounts.findings().get(2).sentence())
        .isEqualTo("100 ft2 (9.3 m2) of galvanised deck over 'Level 1' take a bonding coat first.");
  }

  /** The lines of the tests' building: its deck is sprayed where the job says so. */
  private static List<RatedLine> rate(Job job) {
    RatedLine beam =
        Rated.line().area(3520).inches(job.thickness().restrained() ? 0.5 : 1).member();
    RatedLine deck = Rated.line().step(2).area(3680).inches(0.5).deck();
    RatedLine bare = Rated.line().step(2).area(3680).notNeeded().deck();
    return List.of(beam, job.deck().spray() ? deck : bare);
  }

  /**
   * Hand: the beam alone is 3,520 bf, 100 bags of 35.2 bf. With the deck 3,680 ft2 at 1/2 in more,
   * 1,840 bf, 50 bags of 36.8 bf. Restrained half of the beam. At 30 pcf a bag gives half.
   */
  @Test
  void alternatesStandBesideTheBaseBid() {
    Job job =
        Job.parse(
            "job.yaml",
            PRICES
                + """
                alternates:
                  - {name: deck sprayed, spray-deck: yes}
                  - {name: restrained, restrained: yes}
                  - {name: dense, density: 30 pcf}
                """);
    BidAmounts base =
        BidAmounts.of(rate(job), BidAmountsTest::rate, job, List.of(), Optional.empty());
    assertThat(base.order().bags()).isEqualTo(100);
    assertThat(base.alternates())
        .extracting(AlternateAmounts::name)
        .containsExactly("deck sprayed", "restrained", "dense");
    assertThat(base.alternates())
        .extracting(a -> a.difference().bags())
        .containsExactly(50L, -50L, 100L);
    Headline deck = base.alternates().get(0).difference();
    assertThat(deck.elements()).isEqualTo(1);
    assertThat(deck.area().squareFeet()).isCloseTo(3680, within(1e-5));
    assertThat(deck.inPlace().boardFeet()).isCloseTo(1840, within(1e-5));
    BidAmounts alone =
        amounts(PRICES + "deck: {spray: yes}", rate(Job.parse("j", "deck: {spray: yes}")));
    assertThat(base.money().total().add(deck.total())).isEqualTo(alone.money().total());
    assertThat(base.alternates().get(2).changes()).containsExactly("30 pcf in place");
  }

  @Test
  void anAlternateChangesNothingElse() {
    Job job =
        Job.parse(
            "job.yaml",
            PRICES
                + """
                ratings: [{hours: 2 h, coat: yes}]
                alternates:
                  - {name: a, type: II-A, listing: other.yaml, ratings: [{hours: 1 h}]}
                  - {name: same}
                """);
    Job changed = Change.of(job, job.alternates().get(0));
    assertThat(changed.ratings()).hasSize(2).startsWith(job.ratings().get(0));
    assertThat(changed.building().type()).isPresent();
    assertThat(changed.thickness().listing()).contains("other.yaml");
    assertThat(changed.prices()).isEqualTo(job.prices());
    Job same = Change.of(job, job.alternates().get(1));
    assertThat(JobBasis.of(same, everything())).isEqualTo(JobBasis.of(job, everything()));
  }

  private static List<String> everything() {
    return List.of(
        "project",
        "units",
        "building",
        "exposure",
        "deck",
        "listings",
        "thickness",
        "material",
        "machine",
        "labour",
        "prices",
        "programme",
        "cold",
        "inspection",
        "line",
        "water",
        "power",
        "air",
        "site");
  }

  @Test
  void sumsOfAmountsAgreeAmongThemselves() {
    BidAmounts amounts = amounts(PRICES, Rated.random(21, 300));
    assertThat(amounts.programme().bags()).isEqualTo(amounts.order().bags());
    BigDecimal items =
        amounts.money().items().stream()
            .map(CostItem::cost)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(items).isEqualByComparingTo(amounts.money().cost());
    assertThat(amounts.labour().lines()).hasSameSizeAs(amounts.material().lines());
    assertThat(amounts).isEqualTo(amounts(PRICES, Rated.random(21, 300)));
  }

  @Test
  void everyValueOfTheJobIsInTheBasisWithItsSource() {
    List<BasisLine> basis = amounts("material: {bag: 23 kg}", List.of()).basis();
    assertThat(basis)
        .filteredOn(line -> line.key().equals("material.bag"))
        .containsExactly(
            new BasisLine("material.bag", "weight of a bag", "23 kg", "job file", true));
    assertThat(basis)
        .filteredOn(line -> line.key().equals("material.waste.joist"))
        .extracting(BasisLine::sentence)
        .containsExactly(
            "material.waste.joist: 30 % (joists, purlins and rafters) [common practice]");
    assertThat(basis)
        .filteredOn(line -> line.key().equals("inspection.share"))
        .extracting(BasisLine::source)
        .containsExactly("IBC 1705.15");
    assertThat(basis)
        .filteredOn(line -> line.key().equals("programme.start"))
        .extracting(BasisLine::value)
        .containsExactly("not stated");
    assertThat(basis).extracting(BasisLine::source).doesNotContain("");
    assertThat(basis).extracting(BasisLine::key).doesNotContain("water.hose");
  }
}
