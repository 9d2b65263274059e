package org.coatrun.testmodels.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.Piece;
import org.coatrun.testmodels.ifc.Body;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.IfcWriter;
import org.coatrun.testmodels.ifc.Item;
import org.coatrun.testmodels.ifc.Properties;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Mesh;
import org.coatrun.testmodels.shape.Vec2;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;

/**
 * What an exporter of fabrication models writes beside the members: stiffeners as flat faces, bolts
 * as bars, property and quantity sets for each element.
 */
final class TowerDetail {
  private static final double THICK = 0.01;
  private static final double INSET = 0.25;
  private final Erector erector;
  private final IfcWriter ifc;
  private final int plates;
  private int serial;

  TowerDetail(Erector erector, int plates) {
    this.erector = erector;
    this.ifc = erector.ifc();
    this.plates = plates;
  }

  void column(Level level, Written written, Piece column) {
    sets(written, column);
    Frame frame = Frame.along(column.start(), column.end(), column.up());
    for (int i = 0; i < plates * 2; i++) {
      stiffener(level, column, frame, 0, column.length() - 0.05 - 0.12 * i, i % 2 == 0);
    }
  }

  void beam(Level level, Written written, Piece beam) {
    sets(written, beam);
    Frame frame = Frame.along(beam.start(), beam.end(), beam.up());
    for (int i = 0; i < plates; i++) {
      double near = INSET + 0.3 * i;
      double middle = -beam.section().depth() / 2;
      stiffener(level, beam, frame, middle, near, true);
      stiffener(level, beam, frame, middle, beam.length() - near, false);
    }
  }

  /** A plate between the flanges on one side of the web, its corners cut for the fillets. */
  private void stiffener(
      Level level, Piece host, Frame frame, double middle, double along, boolean left) {
    if (!(host.section() instanceof IShape s)) {
      return;
    }
    double near = s.web() / 2;
    double far = s.width() / 2 - 0.005;
    double half = s.depth() / 2 - s.flange();
    double snip = s.fillet() + 0.004;
    List<Vec2> corners =
        List.of(
            new Vec2(near, -half + snip),
            new Vec2(near + snip, -half),
            new Vec2(far, -half),
            new Vec2(far, half),
            new Vec2(near + snip, half),
            new Vec2(near, half - snip));
    Frame at = new Frame(frame.point(0, middle, along), frame.x(), frame.z());
    Frame turned = left ? at : new Frame(at.origin(), at.x().times(-1), at.z().times(-1));
    Body body = ifc.solids().brep(Mesh.prism(corners, THICK));
    Item item = Item.of(ElementKind.PLATE, "SHEET", "Stiffener", "PL 10 mm", "P" + ++serial);
    Mesh mesh = Mesh.prism(corners, THICK);
    Written plate =
        erector.element(
            level,
            item,
            Grade.A36,
            turned,
            body,
            OptionalDouble.of(mesh.area()),
            OptionalDouble.of(mesh.volume()));
    describe(plate, "P" + serial, "PL 10 mm", Grade.A36);
    bolt(level, turned, near, serial);
  }

  private void bolt(Level level, Frame frame, double near, int number) {
    Vec3 x = frame.x();
    Frame at = new Frame(frame.point(near + 0.03, 0, -0.02), x, frame.z());
    List<Vec2> hexagon = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double angle = i * Math.PI / 3;
      hexagon.add(new Vec2(0.015 * StrictMath.cos(angle), 0.015 * StrictMath.sin(angle)));
    }
    Item item =
        new Item(
            ElementKind.FASTENER, "BOLT", "Bolt", "Bolt 20 mm", "F" + number, List.of(0.02, 0.05));
    erector.element(level, item, Grade.A36, at, ifc.solids().brep(Mesh.prism(hexagon, 0.05)));
  }

  private void sets(Written written, Piece piece) {
    if (plates == 0) {
      return;
    }
    describe(written, piece.mark(), piece.section().name(), piece.grade());
    erector.quantify(written, piece);
  }

  private void describe(Written written, String mark, String profile, Grade grade) {
    Properties p = ifc.properties();
    List<Ref> all =
        List.of(
            p.label("Assembly mark", mark),
            p.label("Profile", profile),
            p.label("Material", grade.title()),
            p.label("Phase", "1"),
            p.label("Lot", "A"),
            p.label("Finish", "Shop primer"),
            p.truth("Checked", true));
    p.set("Fabrication", all, List.of(written.ref()));
  }
}
