package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/**
 * Metres of the building onto millimetres of paper: the middle of the building's extent onto the
 * middle of an area, y up onto y down.
 */
record View(Scale scale, Vec2 middle, Vec2 onPaper) {

  /** Puts the middle of an extent into the middle of an area of paper. */
  static View centred(Scale scale, Extent extent, Box area) {
    return new View(scale, extent.middle(), area.centre());
  }

  Vec2 at(Vec2 p) {
    double k = scale.perMetre();
    return new Vec2(onPaper.x() + k * (p.x() - middle.x()), onPaper.y() - k * (p.y() - middle.y()));
  }

  List<Vec2> at(List<Vec2> points) {
    return points.stream().map(this::at).toList();
  }

  /** A length in metres in millimetres of paper. */
  double size(double metres) {
    return metres * scale.perMetre();
  }

  /** Outline and holes of a region. */
  List<List<Vec2>> rings(Region region) {
    var rings = new ArrayList<List<Vec2>>();
    rings.add(at(region.outline()));
    region.holes().forEach(h -> rings.add(at(h)));
    return rings;
  }
}
