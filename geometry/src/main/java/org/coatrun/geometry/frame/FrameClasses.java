package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coatrun.shared.frame.Connection;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.frame.FrameMember;
import org.coatrun.shared.frame.FramePart;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Role;

/**
 * Puts each piece in its class by IBC section 202: columns; what has a direct connection to a
 * column; bracing that meets a column, taken as essential to stability until the engineer says
 * otherwise. The rest is secondary.
 */
final class FrameClasses {

  private final List<FramePiece> pieces;
  private final FrameGraph graph;
  private final Map<ElementId, Set<ElementId>> trusses;
  private final boolean anyColumn;

  FrameClasses(List<FramePiece> pieces, FrameGraph graph) {
    this.pieces = pieces;
    this.graph = graph;
    this.trusses = graph.trusses();
    this.anyColumn = pieces.stream().anyMatch(FramePiece::isColumn);
  }

  /** One verdict for each piece, in the pieces' order. */
  List<FrameMember> all() {
    Map<ElementId, FrameMember> spanning = new HashMap<>();
    for (FramePiece p : pieces) {
      if (!p.isPlate()) {
        spanning.put(p.id(), spanning(p));
      }
    }
    List<FrameMember> members = new ArrayList<>();
    for (FramePiece p : pieces) {
      members.add(p.isPlate() ? plate(p, spanning) : spanning.get(p.id()));
    }
    return members;
  }

  private FrameMember spanning(FramePiece p) {
    FramePart part = part(p);
    if (p.isColumn()) {
      return new FrameMember(p.id(), part, FrameClass.PRIMARY, "a column" + standsOn(p));
    }
    if (!anyColumn) {
      return new FrameMember(
          p.id(), part, FrameClass.UNKNOWN, "the model has no column to tell by");
    }
    Optional<Connection> own = graph.toColumn(p.id());
    if (own.isPresent()) {
      return new FrameMember(p.id(), part, FrameClass.PRIMARY, meetsColumn(p, own.get()));
    }
    Optional<Connection> shared = trussToColumn(p);
    if (shared.isPresent()) {
      return new FrameMember(
          p.id(), part, FrameClass.PRIMARY, "element of a truss of which " + names(shared.get()));
    }
    return new FrameMember(p.id(), part, FrameClass.SECONDARY, meetsNoColumn(p));
  }

  private FramePart part(FramePiece p) {
    if (p.isColumn()) {
      return FramePart.COLUMN;
    }
    if (p.role() == Role.JOIST) {
      return FramePart.JOIST;
    }
    if (p.role() == Role.TRUSS || trusses.containsKey(p.id())) {
      return FramePart.TRUSS;
    }
    if (p.isBrace()) {
      return FramePart.BRACE;
    }
    if (!p.lies()) {
      return FramePart.OTHER;
    }
    return carriesBeam(p) ? FramePart.GIRDER : FramePart.BEAM;
  }

  private boolean carriesBeam(FramePiece p) {
    return graph.carriedBy(p.id()).stream()
        .filter(c -> c.kind() == Connection.Kind.FRAMES_INTO)
        .anyMatch(c -> graph.piece(c.member()).lies());
  }

  private String standsOn(FramePiece column) {
    return graph.supportsOf(column.id()).stream()
        .filter(c -> c.at().startsWith("its foot"))
        .map(c -> " that stands on " + called(c.support()))
        .findFirst()
        .orElse("");
  }

  private String meetsColumn(FramePiece p, Connection c) {
    String how;
    if (c.support().equals(p.id())) {
      how = "carries " + called(c.member()) + " at that column's " + c.at().substring(4);
    } else if (c.kind() == Connection.Kind.PASSES) {
      how = "passes and touches " + called(c.support());
    } else {
      how = "frames into " + called(c.support()) + " at " + c.at();
    }
    return p.isBrace()
        ? "bracing that " + how + "; taken as essential to stability under gravity load (IBC 202)"
        : how;
  }

  private Optional<Connection> trussToColumn(FramePiece p) {
    return trusses.getOrDefault(p.id(), Set.of()).stream()
        .map(graph::toColumn)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private String names(Connection c) {
    boolean columnCarries = graph.piece(c.support()).isColumn();
    ElementId element = columnCarries ? c.member() : c.support();
    ElementId column = columnCarries ? c.support() : c.member();
    return graph.piece(element).label() + " meets " + called(column);
  }

  private String meetsNoColumn(FramePiece p) {
    List<Connection> supports = supportsOutside(p);
    if (supports.isEmpty()) {
      return "meets no column, nor any other steel at its ends";
    }
    Connection c = supports.get(0);
    String verb = c.kind() == Connection.Kind.SPLICED_TO ? "is spliced to " : "frames into ";
    String who =
        c.member().equals(p.id())
            ? ""
            : "element of a truss of which " + graph.piece(c.member()).label() + " ";
    return who + verb + called(c.support()) + " at " + c.at() + "; meets no column";
  }

  /** What carries a piece; of an element of a truss, what carries the truss. */
  private List<Connection> supportsOutside(FramePiece p) {
    Set<ElementId> truss = trusses.getOrDefault(p.id(), Set.of());
    List<Connection> own = outside(truss, graph.supportsOf(p.id()));
    return own.isEmpty()
        ? truss.stream().flatMap(id -> outside(truss, graph.supportsOf(id)).stream()).toList()
        : own;
  }

  private static List<Connection> outside(Set<ElementId> truss, List<Connection> all) {
    return all.stream().filter(c -> !truss.contains(c.support())).toList();
  }

  private String called(ElementId id) {
    FramePiece p = graph.piece(id);
    return part(p).word() + " " + p.label();
  }

  private FrameMember plate(FramePiece p, Map<ElementId, FrameMember> spanning) {
    List<Connection> touched = graph.supportsOf(p.id());
    FrameMember best = null;
    for (Connection c : touched) {
      FrameMember host = spanning.get(c.support());
      if (best == null || host.frameClass().compareTo(best.frameClass()) < 0) {
        best = host;
      }
    }
    if (best == null) {
      return new FrameMember(
          p.id(), FramePart.PLATE, FrameClass.UNKNOWN, "a plate that touches no member");
    }
    return new FrameMember(
        p.id(), FramePart.PLATE, best.frameClass(), "a plate on " + called(best.id()));
  }
}
