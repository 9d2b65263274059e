package org.coatrun.shared.bid.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.CoatedMember;
import org.coatrun.shared.bid.material.CoatKind;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.bid.material.WorkFloor;
import org.coatrun.shared.job.Inspection;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.rules.InspectionCount;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.rules.ReadingPlace;
import org.coatrun.shared.units.Area;

/**
 * Plans inspection floor by floor. Of each kind of member on a floor the share of the job is drawn,
 * rounded up, so that the floor as a whole has at least that share and no kind is left out.
 */
public final class InspectionPlanner {

  private static final Comparator<MaterialLine> ORDER =
      Comparator.comparing((MaterialLine l) -> l.item().name())
          .thenComparing(l -> l.item().guid())
          .thenComparing(l -> l.item().id());

  private final Inspection terms;
  private int set;

  private InspectionPlanner(Inspection terms) {
    this.terms = terms;
  }

  /** The inspection of a bill. */
  public static InspectionPlan plan(MaterialBill material, Job job) {
    InspectionPlanner planner = new InspectionPlanner(job.inspection());
    Map<String, List<MaterialLine>> byFloor =
        material.lines().stream().collect(Collectors.groupingBy(MaterialLine::floor));
    List<FloorInspection> floors =
        material.floors().stream()
            .filter(floor -> byFloor.containsKey(floor.name()))
            .map(floor -> planner.floor(floor, byFloor.get(floor.name())))
            .toList();
    List<FieldRow> rows =
        floors.stream().flatMap(f -> FieldRows.of(f.floor(), f.drawn()).stream()).toList();
    return new InspectionPlan(floors, rows, RequiredBond.of(job.building(), material.floors()));
  }

  private FloorInspection floor(WorkFloor floor, List<MaterialLine> lines) {
    List<KindCount> kinds = new ArrayList<>();
    List<Drawn> drawn = new ArrayList<>();
    for (List<MaterialLine> members : kinds(lines).values()) {
      MemberKind kind = ((CoatedMember) members.get(0).item()).kind();
      List<MaterialLine> chosen = draw(members);
      chosen.forEach(line -> drawn.add(drawn(line, kind.readingPlace())));
      kinds.add(count(kind, members.size(), chosen.size(), floor.area()));
    }
    List<MaterialLine> decks =
        lines.stream().filter(l -> l.kind() == CoatKind.DECK).sorted(ORDER).toList();
    List<MaterialLine> spots = DeckSpots.of(decks);
    spots.forEach(deck -> drawn.add(drawn(deck, ReadingPlace.DECK)));
    Area sprayed = DeckSpots.area(decks);
    return new FloorInspection(
        floor.name(),
        floor.area(),
        sprayed,
        spots.size(),
        InspectionCount.samples(sprayed),
        kinds,
        drawn);
  }

  private static Map<MemberKind, List<MaterialLine>> kinds(List<MaterialLine> lines) {
    return lines.stream()
        .filter(l -> l.item() instanceof CoatedMember)
        .collect(
            Collectors.groupingBy(
                l -> ((CoatedMember) l.item()).kind(), TreeMap::new, Collectors.toList()));
  }

  private List<MaterialLine> draw(List<MaterialLine> members) {
    long count = InspectionCount.members(members.size(), terms.share());
    return Draw.of(members, count, terms.draw()).stream().sorted(ORDER).toList();
  }

  private Drawn drawn(MaterialLine line, ReadingPlace places) {
    return new Drawn(++set, line.item(), places, line.thickness());
  }

  private static KindCount count(MemberKind kind, long members, long drawn, Optional<Area> floor) {
    return new KindCount(
        kind.word(),
        members,
        drawn,
        drawn * kind.readingPlace().readings(),
        Math.max(1, floor.map(InspectionCount::samples).orElse(1L)));
  }
}
