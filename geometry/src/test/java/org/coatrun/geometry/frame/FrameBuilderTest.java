package org.coatrun.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.Random;
import org.coatrun.shared.frame.Doubled;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.frame.FrameMember;
import org.coatrun.shared.frame.FramePart;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

/** Classes by IBC section 202, on frames drawn with boxes 0.3 m square. */
class FrameBuilderTest {

  private static final FrameBuilder BUILDER = new FrameBuilder(FrameOptions.defaults());

  /** Four columns 6 m apart; a girder north to south on either side; a beam between the girders. */
  private static Steel bay() {
    Steel s = new Steel();
    column(s, "C-1", 0, 0);
    column(s, "C-2", 6, 0);
    column(s, "C-3", 0, 6);
    column(s, "C-4", 6, 6);
    s.bar("G-1", Role.BEAM, new Vec3(0, 0.16, 4), new Vec3(0, 5.84, 4), 0.3);
    s.bar("G-2", Role.BEAM, new Vec3(6, 0.16, 4), new Vec3(6, 5.84, 4), 0.3);
    s.bar("B-1", Role.BEAM, new Vec3(0.16, 3, 4), new Vec3(5.84, 3, 4), 0.3);
    return s;
  }

  private static void column(Steel s, String label, double x, double y) {
    s.bar(label, Role.COLUMN, new Vec3(x, y, 0), new Vec3(x, y, 4.5), 0.3);
  }

  private static FrameMember verdict(Steel s, String label) {
    return BUILDER.build(s.pieces).member(s.id(label)).orElseThrow();
  }

  @Test
  void columnsAndWhatFramesIntoThemArePrimary() {
    Steel s = bay();
    assertThat(verdict(s, "C-1").frameClass()).isEqualTo(FrameClass.PRIMARY);
    FrameMember girder = verdict(s, "G-1");
    assertThat(girder.frameClass()).isEqualTo(FrameClass.PRIMARY);
    assertThat(girder.part()).isEqualTo(FramePart.GIRDER);
    assertThat(girder.reason()).isEqualTo("frames into column C-1 at its south end");
  }

  @Test
  void aBeamBetweenGirdersIsSecondary() {
    FrameMember beam = verdict(bay(), "B-1");
    assertThat(beam.frameClass()).isEqualTo(FrameClass.SECONDARY);
    assertThat(beam.part()).isEqualTo(FramePart.BEAM);
    assertThat(beam.reason()).isEqualTo("frames into girder G-1 at its west end; meets no column");
  }

  @Test
  void thirtyMillimetresAtAnEndAreConnectedAndMoreAreNot() {
    for (double gap : new double[] {0.029, 0.031}) {
      Steel s = new Steel();
      column(s, "C-1", 0, 0);
      s.bar("B", Role.BEAM, new Vec3(0.15 + gap, 0, 4), new Vec3(5, 0, 4), 0.3);
      assertThat(verdict(s, "B").frameClass())
          .isEqualTo(gap < 0.03 ? FrameClass.PRIMARY : FrameClass.SECONDARY);
    }
  }

  @Test
  void anEndPlateBridgesTheWayToTheColumn() {
    Steel s = new Steel();
    column(s, "C-1", 0, 0);
    s.plate("P", new Vec3(0.2, 0, 4), 0.1, 0.3, 0.4);
    s.bar("B", Role.BEAM, new Vec3(0.25, 0, 4), new Vec3(5, 0, 4), 0.3);
    assertThat(verdict(s, "B").reason())
        .isEqualTo("frames into column C-1 at its west end by plate P");
    assertThat(verdict(s, "P").frameClass()).isEqualTo(FrameClass.PRIMARY);
  }

  @Test
  void aBeamOverAColumnsHeadIsPrimary() {
    Steel s = new Steel();
    column(s, "C-1", 3, 0);
    s.bar("T", Role.BEAM, new Vec3(0, 0, 4.65), new Vec3(6, 0, 4.65), 0.3);
    assertThat(verdict(s, "T").reason()).isEqualTo("carries column C-1 at that column's head");
  }

  @Test
  void aColumnOnATransferGirderMakesItPrimary() {
    Steel s = new Steel();
    column(s, "far", 30, 30);
    s.bar("T", Role.BEAM, new Vec3(-3, 0, -0.15), new Vec3(3, 0, -0.15), 0.3);
    column(s, "C-2", 0, 0);
    assertThat(verdict(s, "T").frameClass()).isEqualTo(FrameClass.PRIMARY);
    assertThat(verdict(s, "C-2").reason()).isEqualTo("a column that stands on beam T");
  }

  @Test
  void stackedColumnsNameTheOneBelow() {
    Steel s = new Steel();
    column(s, "C-1", 0, 0);
    s.bar("C-2", Role.COLUMN, new Vec3(0, 0, 4.51), new Vec3(0, 0, 9), 0.3);
    assertThat(verdict(s, "C-2").reason()).isEqualTo("a column that stands on column C-1");
  }

  @Test
  void aBraceWhoseGussetIsMissingIsCarriedOnAlongItsLine() {
    Steel s = bay();
    s.bar("D", Role.BRACE, new Vec3(0.5, 0, 0.4), new Vec3(5.6, 0, 3.9), 0.1);
    FrameMember brace = verdict(s, "D");
    assertThat(brace.frameClass()).isEqualTo(FrameClass.PRIMARY);
    assertThat(brace.part()).isEqualTo(FramePart.BRACE);
    assertThat(brace.reason()).startsWith("bracing that frames into column C-1 at its lower end");
  }

  @Test
  void allElementsOfATrussThatMeetsAColumnArePrimary() {
    Steel s = new Steel();
    column(s, "C-1", -0.2, 0);
    s.bar("bottom", Role.MEMBER, new Vec3(0, 0, 3), new Vec3(8, 0, 3), 0.1);
    s.bar("top", Role.MEMBER, new Vec3(0, 0, 4), new Vec3(8, 0, 4), 0.1);
    for (int i = 0; i < 4; i++) {
      double x = 0.5 + 1.8 * i;
      s.bar("W-" + i, Role.MEMBER, new Vec3(x, 0, 3.05), new Vec3(x + 0.9, 0, 3.95), 0.06);
    }
    for (String label : new String[] {"bottom", "top", "W-0", "W-3"}) {
      assertThat(verdict(s, label).part()).as(label).isEqualTo(FramePart.TRUSS);
    }
    assertThat(verdict(s, "W-2").frameClass()).isEqualTo(FrameClass.SECONDARY);
    s.bar("seat", Role.BEAM, new Vec3(-0.05, 0, 4), new Vec3(0.02, 0, 4), 0.1);
    Steel met = new Steel();
    met.pieces.addAll(s.pieces);
    column(met, "C-9", 8.17, 0);
    assertThat(verdict(met, "W-2").reason())
        .startsWith("element of a truss of which ")
        .endsWith(" meets column C-9");
  }

  @Test
  void aJoistMeetsTheGirderUnderItsSeat() {
    for (double seat : new double[] {0.0635, 0.08}) {
      Steel s = bay();
      s.bar("J", Role.JOIST, new Vec3(0, 2, 4.2 + seat), new Vec3(6, 2, 4.2 + seat), 0.1);
      assertThat(verdict(s, "J").reason().startsWith("frames into girder G-"))
          .isEqualTo(seat < 0.066);
    }
  }

  @Test
  void withoutAColumnNothingIsSaid() {
    Steel s = new Steel();
    s.bar("B", Role.BEAM, Vec3.ZERO, new Vec3(5, 0, 0), 0.3);
    assertThat(verdict(s, "B").frameClass()).isEqualTo(FrameClass.UNKNOWN);
  }

  @Test
  void ofAWholeAndACutTwinTheCutOneCounts() {
    Steel s = bay();
    s.bar("B-1 cut", Role.BEAM, new Vec3(0.2, 3, 4), new Vec3(5.8, 3, 4), 0.3);
    Frame frame = BUILDER.build(s.pieces);
    assertThat(frame.doubles()).containsExactly(new Doubled(s.id("B-1 cut"), s.id("B-1")));
    assertThat(frame.member(s.id("B-1"))).isEmpty();
    assertThat(frame.member(s.id("B-1 cut"))).isPresent();
  }

  @Test
  void twinsSideBySideAreNoDoubles() {
    Steel s = new Steel();
    s.bar("L-1", Role.BEAM, Vec3.ZERO, new Vec3(5, 0, 0), 0.1);
    s.bar("L-2", Role.BEAM, new Vec3(0, 0.1, 0), new Vec3(5, 0.1, 0), 0.1);
    assertThat(BUILDER.build(s.pieces).doubles()).isEmpty();
  }

  @Test
  void theOrderOfThePiecesChangesNothing() {
    Steel s = bay();
    Frame before = BUILDER.build(s.pieces);
    Collections.shuffle(s.pieces, new Random(7));
    Frame after = BUILDER.build(s.pieces);
    assertThat(after.members()).isEqualTo(before.members());
    assertThat(after.connections()).isEqualTo(before.connections());
  }
}
