package org.coatrun.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.bid.CoatedMember;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.bid.labour.LabourLine;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.rules.Bags;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Five pieces of the demonstration building by hand, each step written out, against the program.
 *
 * <p>Sizes, weights and k of the sections: AISC Shapes Database v15.0. D by the contour with root
 * fillets of radius r = kdes - tf (the convention of its columns PA and PB); W/D and D as IBC
 * 722.5.1.1 and Figure 722.5.2 define them. Hours: IBC Table 601, type I-B. Thickness: rows of the
 * demonstration listing, which is invented, linear between them (EN 13381-4, common practice).
 * Attachments: 2 % by the sample job; bags, waste and rates: the defaults (common practice).
 */
class HandCalculationTest {

  private static final double INCH = 0.0254;
  private static final double FOOT = 0.3048;
  private static final double ATTACHMENTS = 1.02;

  /** What four root fillets of radius 1 take off a contour: 8 - 2 pi. */
  private static final double FILLETS = 8 - 2 * Math.PI;

  private static Demonstration demo;
  private static Results results;

  @BeforeAll
  static void takeOff() throws Exception {
    demo = Demonstration.read();
    results = demo.results();
  }

  @Test
  void column() {
    // C3-B2, W12X58: W = 58 lb/ft, d = 12.2, bf = 10.0, tw = 0.360, tf = 0.640, kdes = 1.24 in
    // primary frame, type I-B: 2 h
    // D, all round = 2 (12.2) + 4 (10.0) - 2 (0.36) - (8 - 2 pi) (0.60) = 62.65 in (PB 62.6)
    double d = 2 * 12.2 + 4 * 10.0 - 2 * 0.360 - FILLETS * (1.24 - 0.640);
    assertThat(d).isCloseTo(62.6, within(0.06));
    // W/D = 58 / 62.65 = 0.9258 lb/ft/in, clear of its connections
    double wd = 58 / d;
    // rows 0.8: 1-11/16 in, 1.0: 1-7/16 in
    // 1.6875 - (0.1258 / 0.2) (0.25) = 1.5303 in, up to 1/16 in: 1-9/16 in
    double exact = 1.6875 - (wd - 0.8) / 0.2 * 0.25;
    RatedLine line = rated("C3-B2", 2, wd, exact, 1.5625);

    // it stands on the splice at 17.7 m; its head is under the cap plate, 25 mm below the top of
    // steel under Roof: 20.5 - 5.25 (0.0254) - 0.025 = 20.34165 m; length 2.64165 m
    double head = steel("Roof") - 0.025;
    double length = head - (16.5 + 1.2);
    // on its flanges the end plates of W24X76 (8.99 in wide, 23.9 in deep) and of W24X55 (7.01,
    // 23.6) touch, 25 mm less than their depth, since they reach up beside the cap plate
    double endPlates = 8.99 * INCH * (23.9 * INCH - 0.025) + 7.01 * INCH * (23.6 * INCH - 0.025);
    // on its web two fin plates touch with their edge, 9.5 mm thick: one of W16X26 between the
    // fillets, 10 mm clear of them: 15.7 - 2 (0.747) in less 20 mm = 340.8 mm high; one of W12X26,
    // which sits 2.5 in higher, so that the cap plate cuts it off: 12.2 - 0.68 - 2.5 in less 35 mm
    double fins = 0.0095 * ((15.7 - 2 * 0.747) * INCH - 0.020 + (12.2 - 0.68 - 2.5) * INCH - 0.035);
    // 1.5913 (2.64165) - 0.2352 - 0.0051 = 3.9634 m2 = 42.66 ft2; with attachments 43.51 ft2
    double exposed = d * INCH * length - endPlates - fins;
    exposed("C3-B2", exposed);
    // 43.51 (1.5625) = 67.99 bf; / 0.88 / 40 = 1.932 bags; up to 20 ft: 67.99 / 400 (1.2) = 0.204 h
    work(line, exposed * ATTACHMENTS, 1.5625, 0, 0.12, 400);
    assertThat(boardFeetOf(line)).isCloseTo(67.99, within(0.005));
  }

  @Test
  void girder() {
    // G1-B2, W24X55: d = 23.6, bf = 7.01, tw = 0.395, tf = 0.505, kdes = 1.01 in; under the flat
    // deck of Level 2, so that the top of its top flange is covered
    // primary frame, type I-B: 2 h
    // D = 2 (23.6) + 3 (7.01) - 2 (0.395) - (8 - 2 pi) (0.505) = 66.57 in (PA 66.6)
    double d = 2 * 23.6 + 3 * 7.01 - 2 * 0.395 - FILLETS * (1.01 - 0.505);
    assertThat(d).isCloseTo(66.6, within(0.05));
    // W/D = 55 / 66.57 = 0.8262; rows 0.8: 1 in, 1.0: 7/8 in
    double wd = 55 / d;
    // 1 - (0.0262 / 0.2) (0.125) = 0.9836 in, up to 1/16 in: 1 in
    double exact = 1 - (wd - 0.8) / 0.2 * 0.125;
    RatedLine line = rated("G1-B2", 2, wd, exact, 1);

    // from the flange of a W12X87 (12.5 in deep) to the core wall 0.15 m before its line, 12 mm
    // short of each, where end plates cover its ends: 7.5 - 0.15875 - 0.15 - 0.024 = 7.16725 m
    double length = 7.5 - 12.5 / 2 * INCH - 0.15 - 2 * 0.012;
    // beams that frame in stop 12 mm before its web and touch nothing else of it
    // 1.69095 (7.16725) = 12.1195 m2 = 130.45 ft2; with attachments 133.06 ft2
    double exposed = d * INCH * length;
    exposed("G1-B2", exposed);
    // flutes run along it and leave no voids: 133.06 (1) = 133.06 bf; / 0.88 / 40 = 3.780 bags;
    // up to 20 ft with a pole gun: 133.06 / 500 (1.2) = 0.319 h
    work(line, exposed * ATTACHMENTS, 1, 0, 0.12, 500);
    assertThat(boardFeetOf(line)).isCloseTo(133.06, within(0.005));
  }

  @Test
  void secondaryBeam() {
    // B1-B1-1, W16X26: d = 15.7, bf = 5.50, tw = 0.250, tf = 0.345, kdes = 0.747 in
    // frames into girders alone: secondary, floor construction of type I-B: 2 h
    // D = 2 (15.7) + 3 (5.5) - 2 (0.25) - (8 - 2 pi) (0.402) = 46.71 in (PA 46.7)
    double r = 0.747 - 0.345;
    double d = 2 * 15.7 + 3 * 5.5 - 2 * 0.25 - FILLETS * r;
    assertThat(d).isCloseTo(46.7, within(0.05));
    // W/D = 26 / 46.71 = 0.5566; rows 0.5: 1-5/16 in, 0.65: 1-1/8 in
    double wd = 26 / d;
    // 1.3125 - (0.0566 / 0.15) (0.1875) = 1.2417 in, up to 1/16 in: 1-1/4 in
    double exact = 1.3125 - (wd - 0.5) / 0.15 * 0.1875;
    RatedLine line = rated("B1-B1-1", 2, wd, exact, 1.25);
    assertThat(line.ruling().decidedBy())
        .isEqualTo("IBC Table 601, type I-B, floor construction and secondary members");

    // between webs of two W24X76 (tw 0.44 in), 12 mm short of each: 7 - 0.024 - 0.0112 = 6.9648 m
    double length = 7 - 2 * 0.012 - 0.44 * INCH;
    // coped at both ends under flange and fillet of the W24X76 (tf 0.68, fillet 0.50 in, bf 8.99
    // in): (8.99 - 0.44) / 2 = 4.275 in long, 1.18 in + 12 mm = 1.6524 in deep
    double cope = (8.99 - 0.44) / 2;
    double deep = 0.68 + 0.50 + 0.012 / INCH;
    // a cope takes off the contour above it, less the top that the deck covers anyway: undersides
    // and edges of the flange, two fillets, both sides of the web: 5.50 + 0.19 - 0.18 ... = 8.12 in
    double gone = (5.5 - 0.25 - 2 * r) + 2 * 0.345 + Math.PI * r + 2 * (deep - 0.345 - r);
    // and leaves a level face on the web, 0.25 in wide, and a face across flange and web
    double across = 5.5 * 0.345 + 2 * (1 - Math.PI / 4) * r * r + 0.25 * (deep - 0.345);
    double copes = 2 * (cope * (0.25 - gone) + across) * INCH * INCH;
    // 1.18643 (6.9648) - 0.0410 = 8.2223 m2 = 88.50 ft2; with attachments 90.27 ft2
    double exposed = d * INCH * length + copes;
    exposed("B1-B1-1", exposed);

    // flutes run across it: 2 in deep, ribs 7 and 5 in wide of 12 in, so voids of 1 in on average
    // over the flange between the copes: 5.5 in by 6.7477 m = 10.147 ft2, 10.147 bf
    double bed = 5.5 * INCH * (length - 2 * cope * INCH) / (FOOT * FOOT);
    // 90.27 (1.25) + 10.147 = 122.99 bf; / 0.88 / 40 = 3.494 bags; / 500 (1.2) = 0.295 h
    work(line, exposed * ATTACHMENTS, 1.25, bed, 0.12, 500);
    assertThat(boardFeetOf(line)).isCloseTo(122.99, within(0.005));
  }

  @Test
  void hollowColumn() {
    // C3-A5, HSS8X8X1/2: design wall 0.465 in, outer radius 2 t = 0.93 in, inner 0.465 in
    // P = 4 (8) - (8 - 2 pi) (0.93) = 30.40 in
    double p = 32 - FILLETS * 0.93;
    // A = 64 - (4 - pi) 0.93^2 - [7.07^2 - (4 - pi) 0.465^2] = 13.46 in2 (AISC 13.5)
    double corner = 4 - Math.PI;
    double a = 64 - corner * 0.93 * 0.93 - (7.07 * 7.07 - corner * 0.465 * 0.465);
    assertThat(a).isCloseTo(13.5, within(0.05));
    // A/P = 13.46 / 30.40 = 0.4427 in; rows 0.38: 1-5/16 in, 0.47: 1-3/16 in
    double ap = a / p;
    // 1.3125 - (0.0627 / 0.09) (0.125) = 1.2255 in, up to 1/16 in: 1-1/4 in
    double exact = 1.3125 - (ap - 0.38) / 0.09 * 0.125;
    RatedLine line = demo.rated(results, "C3-A5");
    assertThat(line(line).byArea().orElseThrow().areaOverPerimeterInches())
        .isCloseTo(ap, within(2e-6));
    thickness(line, 2, exact, 1.25);

    // 2.64165 m long, as the W12X58; its ends lie on the column below and under the cap plate
    double length = steel("Roof") - 0.025 - (16.5 + 1.2);
    // an end plate of W18X35 (6.00 in wide, 17.7 in deep, less 25 mm) and the edge of a fin plate
    // of W12X26 as above touch it
    double touched =
        6.00 * INCH * (17.7 * INCH - 0.025) + 0.0095 * ((12.2 - 0.68 - 2.5) * INCH - 0.035);
    // 0.77225 (2.64165) - 0.0666 = 1.9735 m2 = 21.24 ft2; with attachments 21.67 ft2
    double exposed = p * INCH * length - touched;
    exposed("C3-A5", exposed);
    // the inside is no one's to coat: 4 (7.07) - (8 - 2 pi) (0.465) = 27.48 in around
    double inner = (4 * 7.07 - FILLETS * 0.465) * INCH * length;
    assertThat(quantities("C3-A5").ledger().inside().squareMetres()).isCloseTo(inner, within(1e-6));
    // 21.67 (1.25) = 27.08 bf; / 0.88 / 40 = 0.769 bags; up to 20 ft: 27.08 / 400 (1.2) = 0.081 h
    work(line, exposed * ATTACHMENTS, 1.25, 0, 0.12, 400);
    assertThat(boardFeetOf(line)).isCloseTo(27.08, within(0.005));
  }

  @Test
  void deckBay() {
    // Level 3, the bay in the north-west: 5.24 m along the flutes, 4.80 m across them
    // sheet 1.2 mm, 2 in deep, 12 in pitch, flats of 5 in above and below, webs of 1 in in plan
    // flutes: (4.80 - 0.127) / 0.3048 = 15.3, so 15
    int flutes = 15;
    // a web along its slope: sqrt(25.4^2 + 49.6^2) = 55.73 mm
    double web = Math.hypot(INCH, 2 * INCH - 0.0012);
    // soffit across = 4.80 - 30 (0.0254) + 30 (0.05573) = 5.7098 m
    double across = 4.80 - 2 * flutes * INCH + 2 * flutes * web;
    // lower flats alone = 4.80 - 15 (0.1778) = 2.133 m; there three beams touch, whose flanges
    // are 6.49 in (W12X26), 5.00 in (W14X22) and 3.97 in (W12X14) wide
    double flats = 4.80 - flutes * (2 * INCH + 5 * INCH);
    double touched = flats * (6.49 + 5.00 + 3.97) * INCH;
    // exposed = 5.7098 (5.24) - 2.133 (0.3927) = 29.082 m2 = 313.03 ft2
    double exposed = across * 5.24 - touched;
    DeckLine deck =
        results.takeoff().decks().stream()
            .filter(l -> l.identity().name().equals("Metal deck"))
            .filter(l -> Math.abs(exposed(l) - exposed) < 0.5)
            .findFirst()
            .orElseThrow();
    assertThat(exposed(deck)).isCloseTo(exposed, within(1e-4));

    // floor construction of type I-B: 2 h; the listing's deck at 2 h: 9/16 in
    RatedLine line = results.rated(deck.identity().id()).orElseThrow();
    thickness(line, 2, 0.5625, 0.5625);
    // 313.03 ft2 x 0.5625 in = 176.08 bf; / 0.92 / 40 = 4.785 bags; / 700 (1.2) = 0.302 h
    work(line, exposed, 0.5625, 0, 0.08, 700);
    assertThat(boardFeetOf(line)).isCloseTo(176.08, within(0.005));
  }

  private static RatedLine rated(
      String mark, double hours, double wd, double exact, double design) {
    RatedLine line = demo.rated(results, mark);
    assertThat(line(line).byWeight().orElseThrow().weightOverPerimeter())
        .isCloseTo(wd, within(2e-6));
    thickness(line, hours, exact, design);
    return line;
  }

  private static void thickness(RatedLine line, double hours, double exact, double design) {
    assertThat(line.ruling().hours().orElseThrow().hours()).isEqualTo(hours);
    assertThat(line.thickness()).isInstanceOf(Thickness.Given.class);
    Thickness.Given given = (Thickness.Given) line.thickness();
    assertThat(given.exact().inches()).isCloseTo(exact, within(2e-6));
    assertThat(given.design()).isEqualTo(Length.ofInches(design));
  }

  private static void exposed(String mark, double squareMetres) {
    assertThat(quantities(mark).ledger().exposed().squareMetres())
        .isCloseTo(squareMetres, within(1e-6));
  }

  /**
   * Board feet, bags and hours of one piece: square feet by inches and the fill of flutes; with
   * waste, over 50 lb x 12 / 15 pcf = 40 bf a bag; over the rate, a fifth more with a pole gun.
   */
  private static void work(
      RatedLine line, double squareMetres, double inches, double fill, double waste, double rate) {
    double expected = squareMetres / (FOOT * FOOT) * inches + fill;
    LabourLine labour = labour(line);
    MaterialLine material = labour.material();
    assertThat(material.byArea().boardFeet()).isCloseTo(expected, within(1e-4));
    Volume yield = results.amounts().orElseThrow().order().theoreticalYield();
    assertThat(Bags.exact(material.sprayed(), yield))
        .isCloseTo(expected / (1 - waste) / 40, within(1e-5));
    assertThat(labour.crewHours()).isCloseTo(expected / rate * 1.2, within(1e-6));
  }

  private static double boardFeetOf(RatedLine line) {
    return labour(line).material().byArea().boardFeet();
  }

  private static LabourLine labour(RatedLine line) {
    List<LabourLine> lines =
        results.amounts().orElseThrow().labour().lines().stream()
            .filter(l -> l.material().item().id().equals(line.item().id()))
            .toList();
    assertThat(lines).hasSize(1);
    return lines.get(0);
  }

  /** Top of steel under a level: 5-1/4 in of deck and concrete below it, m. */
  private static double steel(String level) {
    return results.takeoff().building().storeys().stream()
            .filter(s -> s.name().equals(level))
            .findFirst()
            .orElseThrow()
            .elevation()
            .metres()
        - 5.25 * INCH;
  }

  private static CoatedMember line(RatedLine line) {
    return (CoatedMember) line.item();
  }

  private static Quantities quantities(String mark) {
    return demo.member(mark).outcome().quantities().orElseThrow();
  }

  private static double exposed(DeckLine deck) {
    return deck.outcome().quantities().orElseThrow().ledger().exposed().squareMetres();
  }
}
