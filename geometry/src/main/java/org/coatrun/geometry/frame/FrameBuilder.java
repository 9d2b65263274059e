package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.coatrun.shared.frame.Connection;
import org.coatrun.shared.frame.Doubled;
import org.coatrun.shared.frame.Frame;
import org.coatrun.shared.frame.FrameMember;
import org.coatrun.shared.model.ElementId;

/** Builds the frame of a building from the boxes about its steel. */
public final class FrameBuilder {

  private final FrameOptions options;

  public FrameBuilder(FrameOptions options) {
    this.options = options;
  }

  /**
   * Finds doubles, connections and classes.
   *
   * @param pieces all the steel, in any order; curved and cut members by the box about them
   */
  public Frame build(List<FramePiece> pieces) {
    List<FramePiece> sorted = new ArrayList<>(pieces);
    sorted.sort(Comparator.comparing(FramePiece::id));
    PieceIndex index = new PieceIndex(sorted);
    List<Doubled> doubles = new DoubleFinder(sorted).find(index);
    Set<ElementId> gone = new HashSet<>();
    doubles.forEach(d -> gone.add(d.doubled()));
    List<FramePiece> counted = sorted.stream().filter(p -> !gone.contains(p.id())).toList();
    PieceIndex among = gone.isEmpty() ? index : new PieceIndex(counted);
    List<Connection> connections = new ConnectionFinder(counted, among, options).find();
    List<FrameMember> members =
        new ArrayList<>(new FrameClasses(counted, new FrameGraph(counted, connections)).all());
    return Frame.of(members, connections, doubles);
  }
}
