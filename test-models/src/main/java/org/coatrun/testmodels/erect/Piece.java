package org.coatrun.testmodels.erect;

import org.coatrun.testmodels.ifc.ElementKind;
import org.coatrun.testmodels.section.Section;
import org.coatrun.testmodels.shape.Vec3;

/**
 * A straight member.
 *
 * @param start where it begins, in the building's coordinates
 * @param end where it ends
 * @param up the direction that the section's y shall be near to
 * @param top true: start and end lie on the middle of the section's top edge, else on its centre
 */
public record Piece(
    ElementKind kind,
    String predefined,
    String name,
    String mark,
    Section section,
    Grade grade,
    Vec3 start,
    Vec3 end,
    Vec3 up,
    boolean top,
    Form form,
    Cope startCope,
    Cope endCope) {

  /** A beam, known by the middle of its top flange. */
  public static Piece beam(String mark, Section section, Vec3 start, Vec3 end) {
    return new Piece(
        ElementKind.BEAM,
        "BEAM",
        "Beam",
        mark,
        section,
        Grade.A992,
        start,
        end,
        Vec3.Z,
        true,
        Form.HALF_SPACES,
        Cope.NONE,
        Cope.NONE);
  }

  /** A column, known by its centre line; the depth of its section runs along {@code up}. */
  public static Piece column(
      String mark, Section section, Grade grade, Vec3 start, Vec3 end, Vec3 up) {
    return new Piece(
        ElementKind.COLUMN,
        "COLUMN",
        "Column",
        mark,
        section,
        grade,
        start,
        end,
        up,
        false,
        Form.HALF_SPACES,
        Cope.NONE,
        Cope.NONE);
  }

  /** Any other member, known by its centre line. */
  public static Piece member(
      String kind, String name, String mark, Section section, Grade grade, Vec3 start, Vec3 end) {
    boolean upright = Math.abs(end.x() - start.x()) + Math.abs(end.y() - start.y()) < 1e-9;
    return new Piece(
        ElementKind.MEMBER,
        kind,
        name,
        mark,
        section,
        grade,
        start,
        end,
        upright ? Vec3.Y : Vec3.Z,
        false,
        Form.HALF_SPACES,
        Cope.NONE,
        Cope.NONE);
  }

  /** Returns the same in another form. */
  public Piece as(Form other) {
    return new Piece(
        kind,
        predefined,
        name,
        mark,
        section,
        grade,
        start,
        end,
        up,
        top,
        other,
        startCope,
        endCope);
  }

  /** Returns the same with copes. */
  public Piece coped(Cope atStart, Cope atEnd) {
    return new Piece(
        kind, predefined, name, mark, section, grade, start, end, up, top, form, atStart, atEnd);
  }

  /** Returns the same under another class, name and grade. */
  public Piece named(ElementKind otherKind, String type, String otherName, Grade otherGrade) {
    return new Piece(
        otherKind,
        type,
        otherName,
        mark,
        section,
        otherGrade,
        start,
        end,
        up,
        top,
        form,
        startCope,
        endCope);
  }

  /** Returns the same, turned so that y is near another direction. */
  public Piece turned(Vec3 otherUp) {
    return new Piece(
        kind,
        predefined,
        name,
        mark,
        section,
        grade,
        start,
        end,
        otherUp,
        top,
        form,
        startCope,
        endCope);
  }

  /** Returns the length in metres. */
  public double length() {
    return end.minus(start).length();
  }

  /** Returns where the section's centre stands in the member's own y. */
  double drop() {
    return top ? -section.depth() / 2 : 0;
  }
}
