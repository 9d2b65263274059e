package org.coatrun.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.bid.CoatedMember;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.surface.SurfaceLedger;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Five pieces of the demonstration building by hand, each step written out, against the program.
 *
 * <p>Sizes, weights and k of the sections: AISC Shapes Database v15.0. D by the contour with root
 * fillets of radius r = kdes - tf (the convention of its columns PA and PB); W/D and D as IBC
 * 722.5.1.1 and Figure 722.5.2 define them. Hours: IBC Table 601, type I-B. Thickness: rows of the
 * demonstration listing, which is invented, linear between them (EN 13381-4, common practice).
 * Attachments: 2 % by the sample job (common practice).
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
    // C1-B2, W12X87: W = 87 lb/ft, d = 12.5, bf = 12.1, tw = 0.515, tf = 0.810, kdes = 1.41 in
    // primary frame, type I-B: 2 h
    // D, all round = 2 (12.5) + 4 (12.1) - 2 (0.515) - (8 - 2 pi) (1.41 - 0.81) = 71.34 in (PB
    // 71.3)
    double d = 2 * 12.5 + 4 * 12.1 - 2 * 0.515 - FILLETS * (1.41 - 0.810);
    assertThat(d).isCloseTo(71.3, within(0.05));
    // W/D = 87 / 71.34 = 1.2195 lb/ft/in
    double wd = 87 / d;
    // rows 1.0: 1-7/16 in, 1.3: 1-3/16 in
    // 1.4375 - (0.2195 / 0.3) (0.25) = 1.2546 in, up to 1/16 in: 1-5/16 in
    double exact = 1.4375 - (wd - 1.0) / 0.3 * 0.25;
    RatedLine line = rated("C1-B2", 2, wd, exact, 1.3125);

    // faces: D x 9.95 m + two ends of A; the program's parts of them add up to that
    Quantities q = quantities("C1-B2");
    double a = 25.6 * INCH * INCH;
    assertThat(faces(q.ledger())).isCloseTo(d * INCH * 9.95 + 2 * a, within(0.002));
    boardFeet(line, q.ledger().exposed().squareMetres() * ATTACHMENTS, 1.3125);
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

    double exposed = quantities("G1-B2").ledger().exposed().squareMetres();
    // at most D x length; what is less is behind clips, plates and beams that frame in
    double most = d * INCH * line(line).length().metres();
    assertThat(exposed).isLessThan(most + 1e-6).isGreaterThan(0.98 * most);
    boardFeet(line, exposed * ATTACHMENTS, 1);
  }

  @Test
  void secondaryBeam() {
    // B1-B1-1, W16X26: d = 15.7, bf = 5.50, tw = 0.250, tf = 0.345, kdes = 0.747 in
    // frames into girders alone: secondary, floor construction of type I-B: 2 h
    // D = 2 (15.7) + 3 (5.5) - 2 (0.25) - (8 - 2 pi) (0.402) = 46.71 in (PA 46.7)
    double d = 2 * 15.7 + 3 * 5.5 - 2 * 0.25 - FILLETS * (0.747 - 0.345);
    assertThat(d).isCloseTo(46.7, within(0.05));
    // W/D = 26 / 46.71 = 0.5566; rows 0.5: 1-5/16 in, 0.65: 1-1/8 in
    double wd = 26 / d;
    // 1.3125 - (0.0566 / 0.15) (0.1875) = 1.2417 in, up to 1/16 in: 1-1/4 in
    double exact = 1.3125 - (wd - 0.5) / 0.15 * 0.1875;
    RatedLine line = rated("B1-B1-1", 2, wd, exact, 1.25);
    assertThat(line.ruling().decidedBy())
        .isEqualTo("IBC Table 601, type I-B, floor construction and secondary members");

    boardFeet(line, quantities("B1-B1-1").ledger().exposed().squareMetres() * ATTACHMENTS, 1.25);
  }

  @Test
  void hollowColumn() {
    // C1-A5, HSS8X8X1/2: design wall 0.465 in, outer radius 2 t = 0.93 in, inner 0.465 in
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
    RatedLine line = results.rated(demo.member("C1-A5").identity().id()).orElseThrow();
    assertThat(line(line).byArea().orElseThrow().areaOverPerimeterInches())
        .isCloseTo(ap, within(2e-6));
    thickness(line, 2, exact, 1.25);

    // faces: P x 9.95 m outside, the inner contour x 9.95 m inside, two ends of A
    SurfaceLedger ledger = quantities("C1-A5").ledger();
    double inner = (4 * 7.07 - FILLETS * 0.465) * INCH * 9.95;
    assertThat(faces(ledger))
        .isCloseTo(p * INCH * 9.95 + inner + 2 * a * INCH * INCH, within(1e-5));
    boardFeet(line, ledger.exposed().squareMetres() * ATTACHMENTS, 1.25);
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
    // 313.03 ft2 x 0.5625 in = 176.1 bf
    boardFeet(line, exposed(deck), 0.5625);
    assertThat(boardFeetOf(line.item().id())).isCloseTo(176.08, within(0.01));
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

  /** Square feet by inches: of a column the sum of what is sprayed from each floor. */
  private static void boardFeet(RatedLine line, double squareMetres, double inches) {
    double expected = squareMetres / (FOOT * FOOT) * inches;
    assertThat(boardFeetOf(line.item().id())).isCloseTo(expected, within(1e-4));
  }

  /** On the steel itself: what fills flutes above it stands apart. */
  private static double boardFeetOf(ElementId id) {
    List<MaterialLine> lines =
        results.amounts().orElseThrow().material().lines().stream()
            .filter(l -> l.item().id().equals(id))
            .toList();
    assertThat(lines).isNotEmpty();
    return lines.stream()
        .mapToDouble(l -> l.byArea().boardFeet() - l.fluteFill().boardFeet())
        .sum();
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

  private static double faces(SurfaceLedger ledger) {
    return ledger.exposed().squareMetres()
        + ledger.covered().squareMetres()
        + ledger.ends().squareMetres()
        + ledger.holes().squareMetres()
        + ledger.inside().squareMetres();
  }
}
