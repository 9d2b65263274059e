package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.entity.Units;
import org.coatrun.shared.shape.Shape;

/**
 * Items of a body, whatever their kind. What is broken or not handled comes out as unsupported,
 * under the name of its kind. For one thread.
 */
final class ItemReader {

  private final Depth depth = new Depth();
  private final Axes axes;
  private final ProfileReader profiles;
  private final SweepReader sweeps;
  private final CombinationReader combinations;
  private final BrepReader breps;
  private final TessellationReader tessellations;
  private final MappedShapes mapped;

  ItemReader(Units units, MappedShapes mapped) {
    this.axes = new Axes(units.length());
    var curves = new CurveReader(axes, units.angle(), depth);
    this.profiles = new ProfileReader(curves, depth);
    this.sweeps = new SweepReader(curves, profiles);
    this.combinations = new CombinationReader(curves, this);
    this.breps = new BrepReader(curves);
    this.tessellations = new TessellationReader(axes);
    this.mapped = mapped;
  }

  ProfileReader profiles() {
    return profiles;
  }

  Axes axes() {
    return axes;
  }

  Depth depth() {
    return depth;
  }

  /** One body from its items. */
  Shape shape(List<Entity> items) {
    var shapes = new ArrayList<Shape>();
    for (Entity item : items) {
      shapes.add(item(item));
    }
    return shapes.size() == 1 ? shapes.get(0) : new Shape.Compound(shapes);
  }

  Shape item(Entity item) {
    try {
      return depth.item(() -> read(item));
    } catch (BrokenRecordException e) {
      return new Shape.Unsupported(item.kind(), e.words());
    }
  }

  private Shape read(Entity item) {
    if (item.isA("IfcExtrudedAreaSolid")) {
      return sweeps.extruded(item);
    }
    if (item.isA("IfcMappedItem")) {
      return mapped.shape(item, this);
    }
    if (item.isA("IfcBooleanResult")) {
      return combinations.combination(item);
    }
    if (item.isA("IfcRevolvedAreaSolid")) {
      return sweeps.revolved(item);
    }
    if (item.isA("IfcSweptAreaSolid")) {
      return sweeps.alongCurve(item);
    }
    if (item.isA("IfcSweptDiskSolid")) {
      return sweeps.disk(item);
    }
    if (item.isA("IfcSectionedSpine") || item.isA("IfcSectionedSolid")) {
      return sweeps.spine(item);
    }
    return faces(item);
  }

  private Shape faces(Entity item) {
    if (item.isA("IfcManifoldSolidBrep")) {
      return breps.brep(item);
    }
    if (item.isA("IfcFaceBasedSurfaceModel")) {
      return breps.shells(item.needRefs("FbsmFaces"));
    }
    if (item.isA("IfcShellBasedSurfaceModel")) {
      return breps.shells(item.needRefs("SbsmBoundary"));
    }
    if (item.isA("IfcConnectedFaceSet")) {
      return breps.shells(List.of(item));
    }
    if (item.isA("IfcTriangulatedFaceSet")) {
      return tessellations.triangulated(item);
    }
    if (item.isA("IfcPolygonalFaceSet")) {
      return tessellations.polygonal(item);
    }
    return combinations.primitive(item);
  }
}
