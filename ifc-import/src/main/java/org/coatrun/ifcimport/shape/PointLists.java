package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.part21.Value;
import org.coatrun.shared.shape.Vec3;

/** Lists of points that others refer to by number, from 1. */
final class PointLists {

  private PointLists() {}

  static List<Vec3> points(Entity list, Axes axes) {
    var points = new ArrayList<Vec3>();
    for (Value point : list.value("CoordList").items()) {
      points.add(axes.scaled(list.numbers(point, "CoordList"), list));
    }
    if (points.isEmpty()) {
      throw list.broken("a list without points");
    }
    return points;
  }

  static Vec3 at(List<Vec3> points, Value index, Entity of) {
    return points.get(index(points.size(), index, of));
  }

  /** An index counted from 0 that is in range. */
  static int index(int size, Value value, Entity of) {
    OptionalLong index = value.asInt();
    if (index.isEmpty() || index.getAsLong() < 1 || index.getAsLong() > size) {
      throw of.broken("it refers to a point that its list does not have");
    }
    return (int) index.getAsLong() - 1;
  }
}
