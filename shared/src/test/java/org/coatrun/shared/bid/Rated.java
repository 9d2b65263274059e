package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/** Rated lines made by hand, in feet and inches. */
public final class Rated {

  private long step = 1;
  private String floor = "Level 1";
  private String section = "W12X26";
  private String rule = "Table 601";
  private Role role = Role.BEAM;
  private MemberKind kind = MemberKind.BEAM;
  private Optional<Length> top = Optional.of(Length.ofFeet(9));
  private Optional<Double> corners = Optional.empty();
  private double lengthFeet = 20;
  private double areaSquareFeet = 100;
  private double bedSquareFeet;
  private double voidBoardFeet;
  private double flangeSquareFeet;
  private boolean roof;
  private boolean flat;
  private Thickness thickness = given(1);

  private static Thickness given(double inches) {
    return new Thickness.Given(
        Length.ofInches(inches), Length.ofInches(inches), "listing", false, "row");
  }

  public static Rated line() {
    return new Rated();
  }

  public Rated step(long value) {
    step = value;
    return this;
  }

  public Rated floor(String value) {
    floor = value;
    return this;
  }

  public Rated section(String value) {
    section = value;
    return this;
  }

  public Rated rule(String value) {
    rule = value;
    return this;
  }

  public Rated kind(MemberKind value, Role as) {
    kind = value;
    role = as;
    return this;
  }

  public Rated topFeet(double value) {
    top = Optional.of(Length.ofFeet(value));
    return this;
  }

  public Rated topUnknown() {
    top = Optional.empty();
    return this;
  }

  public Rated corners(double k, double feetLong) {
    corners = Optional.of(k);
    lengthFeet = feetLong;
    return this;
  }

  public Rated area(double squareFeet) {
    areaSquareFeet = squareFeet;
    return this;
  }

  public Rated fluteBed(double squareFeet) {
    bedSquareFeet = squareFeet;
    return this;
  }

  /** Voids of drawn flutes, and the open flange under them. */
  public Rated drawnFlutes(double boardFeet, double flange) {
    voidBoardFeet = boardFeet;
    flangeSquareFeet = flange;
    return this;
  }

  public Rated inches(double value) {
    thickness = given(value);
    return this;
  }

  public Rated missing() {
    thickness = new Thickness.Missing(WorkFinding.NO_LISTING_ENTRY, "no row");
    return this;
  }

  public Rated notNeeded() {
    thickness = new Thickness.NotNeeded("0 h");
    return this;
  }

  public Rated roof() {
    roof = true;
    return this;
  }

  public Rated flat() {
    flat = true;
    return this;
  }

  private Place place() {
    return new Place(floor, floor, Optional.empty(), "", top, roof, false, Optional.empty());
  }

  private Ruling ruling() {
    return new Ruling(
        Optional.of(FireDuration.ofHours(2)),
        rule,
        rule,
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty());
  }

  private String guid() {
    return "guid" + step;
  }

  public RatedLine member() {
    CoatedMember member =
        new CoatedMember(
            new ElementId(0, step),
            guid(),
            "M" + step,
            place(),
            role,
            kind,
            FrameClass.SECONDARY,
            "",
            section,
            Optional.empty(),
            Optional.empty(),
            Area.ofSquareFeet(areaSquareFeet),
            Area.ofSquareFeet(bedSquareFeet),
            Volume.ofBoardFeet(voidBoardFeet),
            Area.ofSquareFeet(flangeSquareFeet),
            Length.ofFeet(lengthFeet),
            Optional.empty(),
            corners,
            true,
            false,
            Optional.empty());
    return new RatedLine(member, ruling(), thickness);
  }

  public RatedLine deck() {
    CoatedDeck deck =
        new CoatedDeck(
            new ElementId(0, step),
            guid(),
            "D" + step,
            place(),
            Area.ofSquareFeet(areaSquareFeet),
            flat,
            false,
            Optional.empty());
    return new RatedLine(deck, ruling(), thickness);
  }

  /** Lines with awkward numbers, the same for the same seed. */
  public static List<RatedLine> random(long seed, int count) {
    Random random = new Random(seed);
    List<RatedLine> lines = new ArrayList<>();
    MemberKind[] kinds = MemberKind.values();
    Role[] roles = Role.values();
    for (int i = 1; i <= count; i++) {
      Rated line =
          line()
              .step(i)
              .floor("Level " + random.nextInt(5))
              .section("S" + random.nextInt(7))
              .rule("rule " + random.nextInt(4))
              .kind(kinds[random.nextInt(kinds.length)], roles[random.nextInt(roles.length)])
              .topFeet(1 + 45 * random.nextDouble())
              .area(random.nextDouble() * Math.pow(10, random.nextInt(4)))
              .inches((1 + random.nextInt(48)) / 16.0)
              .fluteBed(random.nextInt(3) * random.nextDouble())
              .corners(random.nextDouble() * 4 - 1, 40 * random.nextDouble());
      lines.add(random.nextInt(6) == 0 ? line.flat().deck() : line.member());
    }
    return lines;
  }
}
