package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec3;

/**
 * A form among those near it, in its own axes: all that decides what of it is exposed. Settings are
 * equal where the same forms stand equally far apart in the same order.
 */
final class Setting {

  private final Form form;
  private final Form[] near;
  private final double[] places;
  private final int hash;

  private Setting(Form form, Form[] near, double[] places) {
    this.form = form;
    this.near = near;
    this.places = places;
    int h = System.identityHashCode(form);
    for (Form f : near) {
      h = 31 * h + System.identityHashCode(f);
    }
    this.hash = 31 * h + Arrays.hashCode(places);
  }

  static Setting of(Thing thing, List<Thing> neighbours) {
    Form[] near = new Form[neighbours.size()];
    double[] places = new double[3 * near.length];
    for (int i = 0; i < near.length; i++) {
      Thing other = neighbours.get(i);
      Vec3 from = Spacing.between(thing.at(), other.at());
      near[i] = other.form();
      places[3 * i] = from.x();
      places[3 * i + 1] = from.y();
      places[3 * i + 2] = from.z();
    }
    return new Setting(thing.form(), near, places);
  }

  /** What is near, each under its place in the order, so that no element's own number counts. */
  List<Thing> near() {
    List<Thing> out = new ArrayList<>();
    for (int i = 0; i < near.length; i++) {
      Vec3 at = new Vec3(places[3 * i], places[3 * i + 1], places[3 * i + 2]);
      out.add(new Thing(new ElementId(0, i), near[i], at));
    }
    return out;
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Setting s
        && hash == s.hash
        && form.equals(s.form)
        && Arrays.equals(near, s.near)
        && Arrays.equals(places, s.places);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
