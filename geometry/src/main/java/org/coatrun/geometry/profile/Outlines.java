package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.surface.SectionMeasure.Basis;

/**
 * Draws any profile as an outline.
 *
 * <p>Radii are as the profile gives them; an unknown one is drawn sharp. Dimensions that no section
 * can have make a typed failure; radii alone that have no room are left out with a note.
 */
public final class Outlines {

  private Outlines() {}

  /** The outline with the radii that the profile gives. */
  public static OutlineResult of(Profile profile) {
    try {
      return draw(profile);
    } catch (ImpossibleSectionException e) {
      return e.radiusOnly() ? withoutRadii(profile, e) : failure(e);
    }
  }

  /** The outline with sharp corners throughout: the longer and so the conservative contour. */
  public static OutlineResult sharp(Profile profile) {
    try {
      return draw(Sharp.of(profile));
    } catch (ImpossibleSectionException e) {
      return failure(e);
    }
  }

  private static OutlineResult withoutRadii(Profile profile, ImpossibleSectionException why) {
    OutlineResult plain = sharp(profile);
    if (plain instanceof OutlineResult.Drawn d) {
      var notes = new ArrayList<>(d.notes());
      notes.add(
          new OutlineResult.Note(
              SurfaceFinding.RADII_LEFT_OUT, why.getMessage() + "; drawn with sharp corners"));
      return new OutlineResult.Drawn(d.outline(), notes);
    }
    return plain;
  }

  private static OutlineResult failure(ImpossibleSectionException e) {
    return new OutlineResult.Impossible(e.getMessage());
  }

  private static OutlineResult draw(Profile profile) {
    if (profile instanceof Profile.Unsupported p) {
      return new OutlineResult.NotHandled(p.kind());
    }
    if (profile instanceof Profile.Placed p) {
      return placed(p);
    }
    if (profile instanceof Profile.Composite p) {
      return composite(p);
    }
    List<OutlineResult.Note> notes =
        profile instanceof Profile.Outline p ? FreeShapes.notes(p) : List.of();
    return new OutlineResult.Drawn(single(profile), notes);
  }

  private static OutlineResult placed(Profile.Placed p) {
    OutlineResult inner = draw(p.of());
    if (!(inner instanceof OutlineResult.Drawn d)) {
      return inner;
    }
    double size = Math.abs(p.by().determinant());
    ImpossibleSectionException.require(
        size > 1e-12 && Double.isFinite(size), "a map that does not flatten the profile");
    return new OutlineResult.Drawn(d.outline().map(p.by()), d.notes());
  }

  private static OutlineResult composite(Profile.Composite p) {
    ImpossibleSectionException.require(!p.parts().isEmpty(), "a composite with a part");
    var regions = new ArrayList<Region>();
    var notes = new ArrayList<OutlineResult.Note>();
    var bases = new ArrayList<Basis>();
    for (Profile part : p.parts()) {
      OutlineResult drawn = draw(part);
      if (!(drawn instanceof OutlineResult.Drawn d)) {
        return drawn;
      }
      regions.addAll(d.outline().regions());
      notes.addAll(d.notes());
      bases.add(d.outline().basis());
    }
    Basis common = bases.get(0);
    boolean same = bases.stream().allMatch(b -> b == common);
    return new OutlineResult.Drawn(
        new SectionOutline(regions, same ? common : Basis.AS_DRAWN), notes);
  }

  private static SectionOutline single(Profile profile) {
    if (profile instanceof Profile.IShape p) {
      return solid(RolledShapes.of(p), basis(p.fillet()));
    }
    if (profile instanceof Profile.AsymmetricI p) {
      return solid(RolledShapes.of(p), basis(p.bottom().fillet(), p.top().fillet()));
    }
    if (profile instanceof Profile.UShape p) {
      return solid(RolledShapes.of(p), basis(p.fillet()));
    }
    if (profile instanceof Profile.LShape p) {
      return solid(RolledShapes.of(p), basis(p.fillet()));
    }
    if (profile instanceof Profile.TShape p) {
      return solid(RolledShapes.of(p), basis(p.fillet()));
    }
    if (profile instanceof Profile.CShape p) {
      return solid(FormedShapes.of(p), basis(p.insideRadius()));
    }
    if (profile instanceof Profile.ZShape p) {
      return solid(FormedShapes.of(p), basis(p.fillet()));
    }
    if (profile instanceof Profile.RectangleHollow p) {
      return SectionOutline.of(FormedShapes.of(p), basis(p.outerRadius()));
    }
    return SectionOutline.of(plain(profile), Basis.AS_DRAWN);
  }

  private static Region plain(Profile profile) {
    if (profile instanceof Profile.CircleHollow p) {
      return FormedShapes.of(p);
    }
    if (profile instanceof Profile.Outline p) {
      return FreeShapes.of(p);
    }
    if (profile instanceof Profile.CentreLine p) {
      return CentreLines.of(p);
    }
    if (profile instanceof Profile.Circle p) {
      return new Region(FormedShapes.ellipse(p.radius(), p.radius()), List.of());
    }
    if (profile instanceof Profile.Ellipse p) {
      return new Region(FormedShapes.ellipse(p.semiX(), p.semiY()), List.of());
    }
    if (profile instanceof Profile.Rectangle p) {
      Ring ring = FormedShapes.rectangle(p.width(), p.depth(), p.cornerRadius());
      return new Region(ring, List.of());
    }
    return new Region(FormedShapes.of((Profile.Trapezium) profile), List.of());
  }

  private static SectionOutline solid(Ring ring, Basis basis) {
    return SectionOutline.of(new Region(ring, List.of()), basis);
  }

  private static Basis basis(OptionalDouble... radii) {
    for (OptionalDouble r : radii) {
      if (r.orElse(0) > 0) {
        return Basis.FILLETED;
      }
    }
    return Basis.SHARP;
  }
}
