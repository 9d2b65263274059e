package org.coatrun.geometry.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;

/** A stadium: two straight sides of two pieces each, and two half turns. */
class HeadToTailTest {

  private static final double AREA = 2 * 1 + Math.PI / 4;
  private static final double LENGTH = 2 * 2 + Math.PI;

  private static List<List<Segment2>> parts() {
    return List.of(
        List.of(line(0, 0, 1, 0), line(1, 0, 2, 0)),
        List.of(halfTurn(2, -Math.PI / 2)),
        List.of(line(2, 1, 1.5, 1), line(1.5, 1, 0, 1)),
        List.of(halfTurn(0, Math.PI / 2)));
  }

  private static Segment2 line(double x1, double y1, double x2, double y2) {
    return new Segment2.Line(new Vec2(x1, y1), new Vec2(x2, y2));
  }

  private static Segment2 halfTurn(double x, double from) {
    return new Segment2.Arc(new Vec2(x, 0.5), new Vec2(0.5, 0), new Vec2(0, 0.5), from, Math.PI);
  }

  @Test
  void partsThatRunTheWrongWayAreTurnedRoundAndSaid() {
    for (int wrong = 0; wrong < 16; wrong++) {
      OutlineResult.Drawn drawn = (OutlineResult.Drawn) Outlines.of(outline(parts(), wrong));
      assertThat(drawn.outline().area()).isCloseTo(AREA, within(1e-12));
      assertThat(drawn.outline().outerPerimeter()).isCloseTo(LENGTH, within(1e-12));
      assertThat(drawn.notes().stream().map(OutlineResult.Note::code))
          .isEqualTo(wrong == 0 ? List.of() : List.of(SurfaceFinding.PIECES_TURNED));
    }
  }

  @Test
  void anOutlineThatNoTurningClosesIsRefused() {
    var parts = new ArrayList<>(parts());
    parts.set(2, List.of(line(2, 1.1, 0, 1.1)));
    assertThat(Outlines.of(outline(parts, 4))).isInstanceOf(OutlineResult.Impossible.class);
  }

  /** The parts one after the other, those of the set bits backwards. */
  private static Profile outline(List<List<Segment2>> parts, int wrong) {
    var pieces = new ArrayList<Segment2>();
    for (int i = 0; i < parts.size(); i++) {
      var part = new ArrayList<>(parts.get(i));
      if ((wrong >> i & 1) == 1) {
        part.replaceAll(Pieces::reversed);
        Collections.reverse(part);
      }
      pieces.addAll(part);
    }
    return new Profile.Outline("", new Curve2(pieces, true), List.of());
  }
}
