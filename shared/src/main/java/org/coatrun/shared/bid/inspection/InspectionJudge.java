package org.coatrun.shared.bid.inspection;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.coatrun.shared.job.UnitSystem;
import org.coatrun.shared.rules.ThicknessJudge;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.JobFileException;

/** Judges field sheets that came back by the averaging rule and by the 10 % rule, each apart. */
public final class InspectionJudge {

  private final String file;
  private final UnitSystem units;

  private InspectionJudge(String file, UnitSystem units) {
    this.file = file;
    this.units = units;
  }

  /**
   * Judges readings.
   *
   * @param file name to use in messages
   * @param units that reasons are written in
   * @throws JobFileException where rows of one set disagree on floor or design, or a place stands
   *     twice
   */
  public static InspectionJudgement judge(
      String file, List<FieldReading> readings, UnitSystem units) {
    return new InspectionJudge(file, units).judge(readings);
  }

  private InspectionJudgement judge(List<FieldReading> readings) {
    List<SetJudgement> sets =
        groups(readings, r -> r.row().set()).values().stream().map(this::set).toList();
    return new InspectionJudgement(
        sets,
        groups(sets, s -> s.head().floor()).values().stream().map(InspectionJudge::floor).toList(),
        sets.stream().filter(SetJudgement::mustBeResprayed).map(this::respray).toList());
  }

  private SetJudgement set(List<FieldReading> rows) {
    FieldRow head = rows.get(0).row();
    requireOneMember(rows);
    Length design = head.design();
    List<Length> taken = rows.stream().flatMap(r -> r.reading().stream()).toList();
    Length least = head.least();
    return new SetJudgement(
        head,
        taken.size(),
        rows.size() - taken.size(),
        taken.isEmpty() ? Optional.empty() : Optional.of(ThicknessJudge.averaging(design, taken)),
        taken.isEmpty() ? Optional.empty() : Optional.of(ThicknessJudge.tenPercent(design, taken)),
        rows.stream()
            .filter(r -> r.reading().map(x -> ThicknessJudge.isUnder(x, least)).orElse(false))
            .toList());
  }

  private void requireOneMember(List<FieldReading> rows) {
    FieldRow head = rows.get(0).row();
    Map<String, Integer> places = new LinkedHashMap<>();
    for (FieldReading reading : rows) {
      FieldRow row = reading.row();
      if (!row.floor().equals(head.floor()) || !row.design().equals(head.design())) {
        throw fault(reading, "set", "the rows of set " + row.set() + " differ in floor or design.");
      }
      String place = "end " + row.end() + " place " + row.place();
      Integer before = places.put(place, reading.line());
      if (before != null) {
        throw fault(
            reading,
            "place",
            place + " of set " + row.set() + " stands on line " + before + " already.");
      }
    }
  }

  private JobFileException fault(FieldReading at, String column, String sentence) {
    return new JobFileException(file, at.line(), column, sentence);
  }

  private static FloorJudgement floor(List<SetJudgement> sets) {
    int notRead = (int) sets.stream().filter(s -> s.taken() == 0).count();
    int failAveraging = (int) failing(sets, SetJudgement::passesAveraging);
    long below =
        sets.stream().flatMap(s -> s.tenPercent().stream()).mapToLong(t -> t.below()).sum();
    long readings = sets.stream().mapToLong(SetJudgement::taken).sum();
    return new FloorJudgement(
        sets.get(0).head().floor(),
        sets.size(),
        notRead,
        failAveraging,
        (int) failing(sets, SetJudgement::passesTenPercent),
        below,
        readings,
        sets.stream().mapToLong(SetJudgement::missing).sum(),
        readings > 0 && failAveraging == 0,
        readings > 0 && ThicknessJudge.withinTenPercent(below, readings));
  }

  private static long failing(List<SetJudgement> sets, Function<SetJudgement, Boolean> passes) {
    return sets.stream().filter(s -> s.taken() > 0 && !passes.apply(s)).count();
  }

  private Respray respray(SetJudgement set) {
    FieldRow head = set.head();
    return new Respray(
        head.floor(),
        head.set(),
        head.guid(),
        head.name(),
        head.kind(),
        head.design(),
        set.lacking(),
        set.underLeast().stream().map(r -> place(r.row())).toList(),
        new ResprayReason(units).of(set));
  }

  private static String place(FieldRow row) {
    return "end " + row.end() + ", " + row.where();
  }

  private static <K, T> Map<K, List<T>> groups(List<T> items, Function<T, K> key) {
    return items.stream()
        .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
  }
}
