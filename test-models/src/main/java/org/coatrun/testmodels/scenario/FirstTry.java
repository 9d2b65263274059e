package org.coatrun.testmodels.scenario;

import java.util.List;
import org.coatrun.testmodels.erect.Box;
import org.coatrun.testmodels.erect.Cope;
import org.coatrun.testmodels.erect.Erector;
import org.coatrun.testmodels.erect.Fabric;
import org.coatrun.testmodels.erect.Form;
import org.coatrun.testmodels.erect.Grade;
import org.coatrun.testmodels.erect.Level;
import org.coatrun.testmodels.erect.Piece;
import org.coatrun.testmodels.erect.PropertyGroup;
import org.coatrun.testmodels.erect.SlabMakeUp;
import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.ifc.Item;
import org.coatrun.testmodels.ifc.Written;
import org.coatrun.testmodels.section.IShape;
import org.coatrun.testmodels.section.Outline;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.section.Sections;
import org.coatrun.testmodels.shape.Vec3;

/**
 * A ticket hall of one storey and a roof: two bays of 7.5 m by one of 8 m, about twenty members.
 *
 * <p>Six columns carry four girders along x and three beams along y on the columns; four more beams
 * frame into the girders with copes. A flat slab named as deck lies on top of the steel.
 */
public final class FirstTry implements Scenario {
  private static final double ROOF = 5.0;
  private static final double BAY = 7.5;
  private static final double DEPTH = 8.0;
  private static final double GAP = 0.012;
  private static final double EDGE = 0.15;

  @Override
  public Titles titles() {
    return new Titles("first-try.ifc", "First try", "Kittiwake Quay 2", "Ticket hall");
  }

  @Override
  public void build(Erector erector) {
    Level ground = erector.level("Ground floor", 0);
    Level roof = erector.level("Roof", ROOF);
    Fabric fabric = new Fabric(erector);
    Outline plate = Outline.box("plate", -EDGE, -EDGE, 2 * BAY + EDGE, DEPTH + EDGE);
    fabric.slab(ground, SlabMakeUp.concrete("BASESLAB", 0.15), "Slab on grade", plate, 0);
    fabric.slab(roof, SlabMakeUp.compositeDeck(), "Roof slab on deck", plate, ROOF);
    columns(erector, ground);
    girders(erector, roof);
    beams(erector, roof);
    braces(erector, ground);
    Item back = Item.of(ElementKind.WALL, "STANDARD", "Back wall", "Concrete wall", "");
    double under = ROOF - SlabMakeUp.compositeDeck().thickness() - 0.6;
    Box wall = new Box(-EDGE, DEPTH + 0.25, 0, 2 * BAY + EDGE, DEPTH + 0.45, under);
    fabric.block(ground, back, Grade.CONCRETE, wall);
    Outline hall = Outline.box("hall", 0.1, 0.1, 2 * BAY - 0.1, DEPTH - 0.1);
    fabric.space(ground, "1", "Ticket hall", hall, 4.2);
  }

  private static double steel() {
    return ROOF - SlabMakeUp.compositeDeck().thickness();
  }

  private static Section column(int x) {
    return x == 2 ? Sections.HSS8X8X1_2 : Sections.W10X49;
  }

  private static void columns(Erector erector, Level level) {
    for (int x = 0; x < 3; x++) {
      for (int y = 0; y < 2; y++) {
        String mark = "C" + (1 + 2 * x + y);
        Grade grade = x == 2 ? Grade.A500 : Grade.A992;
        Vec3 foot = new Vec3(x * BAY, y * DEPTH, 0);
        Vec3 head = new Vec3(x * BAY, y * DEPTH, steel());
        Written column =
            erector.member(level, Piece.column(mark, column(x), grade, foot, head, Vec3.X));
        erector.describe(column, new PropertyGroup.Rating(ElementKind.COLUMN, "2 h"));
        erector.describe(column, new PropertyGroup.Finish("Shop primer"));
      }
    }
  }

  private static void girders(Erector erector, Level level) {
    for (int x = 0; x < 2; x++) {
      for (int y = 0; y < 2; y++) {
        double start = x * BAY + column(x).depth() / 2 + GAP;
        double end = (x + 1) * BAY - column(x + 1).depth() / 2 - GAP;
        Vec3 from = new Vec3(start, y * DEPTH, steel());
        Vec3 to = new Vec3(end, y * DEPTH, steel());
        Piece girder = Piece.beam("G" + (1 + 2 * x + y), Sections.W18X35, from, to);
        Written written = erector.member(level, girder);
        erector.describe(written, new PropertyGroup.Rating(ElementKind.BEAM, "1 h"));
        erector.quantify(written, girder);
      }
    }
  }

  private static void beams(Erector erector, Level level) {
    for (int x = 0; x < 3; x++) {
      double face = x == 2 ? column(x).depth() / 2 : Sections.W10X49.web() / 2;
      Vec3 from = new Vec3(x * BAY, face + GAP, steel());
      Vec3 to = new Vec3(x * BAY, DEPTH - face - GAP, steel());
      erector.member(level, Piece.beam("B" + (1 + x), Sections.W12X26, from, to));
    }
    IShape girder = Sections.W18X35;
    double end = girder.web() / 2 + GAP;
    double length = (girder.width() - girder.web()) / 2;
    Cope cope = new Cope(length, girder.flange() + girder.fillet() + 0.01);
    int mark = 4;
    for (double x : List.of(2.5, 5.0, 10.0, 12.5)) {
      Vec3 from = new Vec3(x, end, steel());
      Vec3 to = new Vec3(x, DEPTH - end, steel());
      Piece beam = Piece.beam("B" + mark, Sections.W12X14, from, to).coped(cope, cope);
      erector.member(level, mark % 2 == 0 ? beam : beam.as(Form.OPENINGS));
      mark++;
    }
  }

  private static void braces(Erector erector, Level level) {
    double low = 0.4;
    double high = steel() - 0.6;
    Vec3 left = new Vec3(0, 0.5, low);
    Vec3 right = new Vec3(0, DEPTH - 0.5, low);
    Vec3 apexLeft = new Vec3(0, DEPTH / 2 - 0.3, high);
    Vec3 apexRight = new Vec3(0, DEPTH / 2 + 0.3, high);
    Section section = Sections.HSS6X6X1_4;
    Grade grade = Grade.A500;
    erector.member(level, Piece.member("BRACE", "Brace", "V1", section, grade, left, apexLeft));
    erector.member(level, Piece.member("BRACE", "Brace", "V2", section, grade, right, apexRight));
  }
}
