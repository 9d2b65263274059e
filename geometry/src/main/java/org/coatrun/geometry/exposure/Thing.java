package org.coatrun.geometry.exposure;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec3;

/**
 * A body that stands in the building: measured itself, or only covering others.
 *
 * @param at where the origin of its form is
 * @param bounds a box about it
 */
public record Thing(ElementId id, Form form, Vec3 at, Box bounds) {

  /** A form that stands somewhere. */
  public Thing(ElementId id, Form form, Vec3 at) {
    this(id, form, at, form.bounds().moved(at));
  }

  /** Those of the patches of its form that touch a box where it stands, as they were made. */
  List<Patch> patchesNear(Box box) {
    return near(form.boundary().patches(), box);
  }

  /** Those of some patches of its form that touch a box where it stands, there. */
  public List<Patch> moved(List<Patch> patches, Box box) {
    return near(patches, box).stream().map(p -> p.moved(at)).toList();
  }

  private List<Patch> near(List<Patch> patches, Box box) {
    Box here = box.moved(at.times(-1));
    List<Patch> out = new ArrayList<>();
    for (Patch p : patches) {
      if (p.bounds().overlaps(here, 0)) {
        out.add(p);
      }
    }
    return out;
  }

  /** Whether any original reaches behind a plane by more than a distance. */
  boolean reachesBehind(Plane plane, double by) {
    return form.envelope().reachesBehind(plane, at, by);
  }
}
