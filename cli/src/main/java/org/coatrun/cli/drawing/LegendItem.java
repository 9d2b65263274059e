package org.coatrun.cli.drawing;

import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.shape.Vec2;

/** What a drawing may show, with its words and a sample. */
enum LegendItem {
  SLAB("edge of slab", line(Pen.PLATE)),
  CUT_SLAB("slab, cut", solid(Tone.MEDIUM)),
  WALL("wall that hose goes around", solid(Tone.MEDIUM)),
  COLUMN("column", solid(Tone.BLACK)),
  OPENING("opening, shaft or chase", crossed()),
  STAIR("stair or ramp", treads()),
  GROUND("end of the level ground that is assumed", line(Pen.GROUND)),
  KEEP_OUT("keep-out of the job file", line(Pen.KEEP_OUT)),
  STEEL("steel overhead, sprayed from here", line(Pen.STEEL)),
  PIPE("standpipe", pipe()),
  HOSE("hose to risers and farthest places, as laid", line(Pen.HOSE)),
  HOSE_RUN("hose", line(Pen.HOSE)),
  HOSE_OTHER("hose to the other places of a set-up", line(Pen.HOSE_OTHER)),
  REACH("end of the hose's reach; the whip goes beyond", line(Pen.REACH)),
  NOZZLE("place of work, by hand; number of its set-up", cell(Access.NOZZLE)),
  POLE_GUN("place of work, by pole gun", cell(Access.POLE_GUN)),
  LIFT("place of work, from a lift", cell(Access.LIFT)),
  SCAFFOLD("place of work, from a scaffold", cell(Access.SCAFFOLD)),
  UNREACHED("place of work that no line reaches", (on, at) -> new Symbols(on).unreached(at)),
  OUTLET("outlet: hose begins here", (on, at) -> new Symbols(on).outlet(at)),
  PIPE_RISER("riser, standpipe", (on, at) -> new Symbols(on).riser(at, true)),
  HOSE_RISER("riser, hose", (on, at) -> new Symbols(on).riser(at, false)),
  UNUSED_RISER("riser looked at, not used", (on, at) -> new Symbols(on).unusedRiser(at)),
  MACHINE("machine", (on, at) -> new Symbols(on).machine(at)),
  BAGS("bags, dry and off the floor", (on, at) -> new Symbols(on).bags(at)),
  ROOM("room for machine and bags", line(Pen.ROOM)),
  POWER("power", (on, at) -> new Symbols(on).supply(at, "P")),
  WATER("water", (on, at) -> new Symbols(on).supply(at, "W")),
  TRUCKS("trucks unload", (on, at) -> new Symbols(on).supply(at, "T"));

  private static final double HALF = 6;

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // samples keep nothing
  private final Sample sample;

  LegendItem(String words, Sample sample) {
    this.words = words;
    this.sample = sample;
  }

  /** Draws a sample around a point, within 6 mm to its left and right and 3 mm up and down. */
  interface Sample {
    void draw(Surface on, Vec2 at);
  }

  String words() {
    return words;
  }

  void sample(Surface on, Vec2 at) {
    sample.draw(on, at);
  }

  static LegendItem of(Access access) {
    return switch (access) {
      case NOZZLE -> NOZZLE;
      case POLE_GUN -> POLE_GUN;
      case LIFT -> LIFT;
      case SCAFFOLD, FROM_OUTSIDE -> SCAFFOLD;
    };
  }

  private static List<Vec2> level(Vec2 at) {
    return List.of(at.plus(new Vec2(-HALF, 0)), at.plus(new Vec2(HALF, 0)));
  }

  private static Sample line(Pen pen) {
    return (on, at) -> on.line(level(at), false, pen);
  }

  private static Sample pipe() {
    return (on, at) -> {
      on.line(level(at), false, Pen.PIPE);
      on.line(level(at), false, Pen.PIPE_CORE);
    };
  }

  private static Sample solid(Tone tone) {
    return (on, at) -> {
      List<Vec2> ring = Box.around(at, tone == Tone.BLACK ? 2 : 2 * HALF, 2).ring();
      on.fill(List.of(ring), tone);
      on.line(ring, true, Pen.OUTLINE);
    };
  }

  private static Sample crossed() {
    return (on, at) -> {
      List<Vec2> ring = Box.around(at, 6, 3).ring();
      on.line(ring, true, Pen.OUTLINE);
      on.line(List.of(ring.get(0), ring.get(2)), false, Pen.THIN);
      on.line(List.of(ring.get(1), ring.get(3)), false, Pen.THIN);
    };
  }

  private static Sample treads() {
    return (on, at) -> {
      List<Vec2> ring = Box.around(at, 8, 3).ring();
      on.line(ring, true, Pen.OUTLINE);
      Hatch.lines(List.of(ring), 90, 1.1).forEach(t -> on.line(t, false, Pen.THIN));
    };
  }

  private static Sample cell(Access access) {
    return (on, at) -> new Symbols(on).cell(at, access, "3");
  }
}
