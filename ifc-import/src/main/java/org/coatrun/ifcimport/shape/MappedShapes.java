package org.coatrun.ifcimport.shape;

import java.util.LinkedHashMap;
import java.util.Map;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/** Shapes that many elements share; the ones used last are kept. Safe for several threads. */
final class MappedShapes {

  private static final int KEPT = 512;

  private final Map<Long, Depth.Measured<Shape>> kept =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Depth.Measured<Shape>> eldest) {
          return size() > KEPT;
        }
      };

  /** One use of a shared shape: through the origin of its map, then through the target. */
  Shape shape(Entity item, ItemReader reader) {
    Entity map = item.need("MappingSource");
    Transform3 target = reader.axes().operator3(item.need("MappingTarget"));
    Transform3 by = target.after(reader.axes().frame(map, "MappingOrigin"));
    Shape source = source(map, reader);
    return Axes.isIdentity(by) ? source : new Shape.Placed(by, source);
  }

  private Shape source(Entity map, ItemReader reader) {
    synchronized (kept) {
      Depth.Measured<Shape> known = kept.get(map.id());
      if (known != null) {
        return reader.depth().again(known);
      }
    }
    Depth.Measured<Shape> read =
        reader
            .depth()
            .measured(() -> reader.shape(map.need("MappedRepresentation").needRefs("Items")));
    synchronized (kept) {
      kept.put(map.id(), read);
    }
    return read.read();
  }
}
