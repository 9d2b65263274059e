package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.shape.Vec2;

/** Our own plain symbols, each around a point. */
final class Symbols {

  static final double CELL = 2;
  static final double OUTLET = 1.7;
  static final double RISER = 2.2;
  static final double MACHINE = 3.6;
  static final double SUPPLY = 2.0;

  private static final double SMALL = 2.1;

  private final Surface on;

  Symbols(Surface on) {
    this.on = on;
  }

  /** A place of work: its shape says what reaches the steel, the number the set-up. */
  void cell(Vec2 at, Access access, String number) {
    List<Vec2> shape =
        switch (access) {
          case NOZZLE -> List.of();
          case POLE_GUN -> ring(at, 1.6 * CELL, 3, -90);
          case LIFT -> ring(at, 1.35 * CELL, 4, 45);
          case SCAFFOLD, FROM_OUTSIDE -> ring(at, 1.25 * CELL, 6, 0);
        };
    if (shape.isEmpty()) {
      on.disc(at, CELL, Pen.OUTLINE, Tone.WHITE);
    } else {
      on.fill(List.of(shape), Tone.WHITE);
      on.line(shape, true, Pen.OUTLINE);
    }
    double size = number.length() > 2 ? 1.7 : SMALL;
    centred(at, number, Lettering.plain(size).centred());
  }

  /** A place of work that no line reaches. */
  void unreached(Vec2 at) {
    on.disc(at, CELL, Pen.PLATE, Tone.WHITE);
    cross(at, 0.7 * CELL, Pen.PLATE);
  }

  /** Where hose leaves pipe or riser. */
  void outlet(Vec2 at) {
    outlet(at, OUTLET);
  }

  /** The same in another size. */
  void outlet(Vec2 at, double radius) {
    on.fill(List.of(ring(at, radius, 4, 0)), Tone.WHITE);
    on.fill(List.of(ring(at, radius - 0.3, 4, 0)), Tone.BLACK);
  }

  /** A riser in use: a full core for pipe, a ring for hose. */
  void riser(Vec2 at, boolean standpipe) {
    on.disc(at, RISER, Pen.SYMBOL, Tone.WHITE);
    on.disc(at, RISER / 2, Pen.SYMBOL, standpipe ? Tone.BLACK : Tone.WHITE);
  }

  /** A place where a riser could go up, not used. */
  void unusedRiser(Vec2 at) {
    on.disc(at, RISER / 2, Pen.THIN, Tone.WHITE);
    cross(at, 0.35 * RISER, Pen.THIN);
  }

  void machine(Vec2 at) {
    Box box = Box.around(at, 2 * MACHINE, 1.4 * MACHINE);
    on.fill(List.of(box.ring()), Tone.WHITE);
    on.line(box.ring(), true, Pen.PLATE);
    Box hopper = new Box(box.left(), box.top(), at.x() - 0.35 * MACHINE, box.bottom());
    on.fill(List.of(hopper.ring()), Tone.BLACK);
    centred(at.plus(new Vec2(0.33 * MACHINE, 0)), "M", Lettering.bold(3).centred());
  }

  /** The stack of bags: a box of layers. */
  void bags(Vec2 at) {
    Box box = Box.around(at, 1.6 * MACHINE, MACHINE);
    on.fill(List.of(box.ring()), Tone.WHITE);
    on.line(box.ring(), true, Pen.OUTLINE);
    for (int layer = 1; layer < 4; layer++) {
      double y = box.top() + layer * box.height() / 4;
      on.line(List.of(new Vec2(box.left(), y), new Vec2(box.right(), y)), false, Pen.THIN);
    }
    on.line(List.of(new Vec2(at.x(), box.top()), new Vec2(at.x(), box.bottom())), false, Pen.THIN);
  }

  /** Where power, water or trucks come in. */
  void supply(Vec2 at, String letter) {
    Box box = Box.around(at, 2 * SUPPLY, 2 * SUPPLY);
    on.fill(List.of(box.ring()), Tone.WHITE);
    on.line(box.ring(), true, Pen.SYMBOL);
    centred(at, letter, Lettering.bold(2.6).centred());
  }

  private void cross(Vec2 at, double arm, Pen pen) {
    on.line(List.of(at.plus(new Vec2(-arm, -arm)), at.plus(new Vec2(arm, arm))), false, pen);
    on.line(List.of(at.plus(new Vec2(-arm, arm)), at.plus(new Vec2(arm, -arm))), false, pen);
  }

  private void centred(Vec2 at, String text, Lettering lettering) {
    double down = Lettering.CAPITAL * lettering.size() / 2;
    on.text(at.plus(new Vec2(0, down)), text, lettering, 0);
  }

  /** A regular polygon, its first corner in the direction given. */
  static List<Vec2> ring(Vec2 at, double radius, int corners, double degrees) {
    var ring = new ArrayList<Vec2>();
    for (int i = 0; i < corners; i++) {
      double a = Math.toRadians(degrees + 360.0 * i / corners);
      ring.add(at.plus(new Vec2(radius * Math.cos(a), radius * Math.sin(a))));
    }
    return ring;
  }
}
