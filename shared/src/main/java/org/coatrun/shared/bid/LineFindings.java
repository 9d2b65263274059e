package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.units.FireDuration;

/** What is amiss with one rated element. */
final class LineFindings {

  private static final double SAME_MINUTES = 1e-6;

  private final Building building;

  LineFindings(Building building) {
    this.building = building;
  }

  /** The findings of a line, in the order of their codes. */
  List<Finding> of(RatedLine line) {
    List<Finding> findings = new ArrayList<>();
    Coated item = line.item();
    boolean sprayed = line.thickness().spray().isPresent();
    if (item instanceof CoatedMember m && m.frameClass() == FrameClass.UNKNOWN && byTable(line)) {
      findings.add(
          about(item, WorkFinding.CLASS_UNKNOWN, ": " + m.classReason() + "; rated as primary."));
    }
    item.modelRating().ifPresent(text -> stated(line, text).ifPresent(findings::add));
    if (line.thickness() instanceof Thickness.Missing missing && !listingMissing(missing)) {
      findings.add(about(item, missing.code(), ": " + missing.reason() + "."));
    }
    if (item instanceof CoatedMember m && m.primed() && sprayed) {
      findings.add(about(item, WorkFinding.PRIMED_STEEL, " is primed or painted in the model."));
    }
    return findings;
  }

  /** Said once for the job, not for each element. */
  private static boolean listingMissing(Thickness.Missing missing) {
    return missing.code() == WorkFinding.NO_LISTING_ENTRY
        && missing.reason().endsWith(ThicknessFinder.NO_LISTING);
  }

  private static boolean byTable(RatedLine line) {
    return line.ruling().coat() && line.ruling().decidedBy().startsWith("IBC Table 601");
  }

  private Optional<Finding> stated(RatedLine line, String text) {
    Optional<FireDuration> read = RatingText.read(text);
    if (read.isEmpty()) {
      return Optional.of(
          about(
              line.item(),
              WorkFinding.RATING_UNREADABLE,
              ": the model's FireRating is '" + text + "'."));
    }
    Optional<FireDuration> used = line.ruling().hours();
    boolean same =
        used.isPresent() && Math.abs(used.get().minutes() - read.get().minutes()) < SAME_MINUTES;
    if (same) {
      return Optional.empty();
    }
    String hours = used.map(Shown::hours).orElse("none");
    return Optional.of(
        about(
            line.item(),
            WorkFinding.RATING_DIFFERS,
            ": the model says '" + text + "', used is " + hours + "."));
  }

  private Finding about(Coated item, WorkFinding code, String rest) {
    String name = item.called();
    String sentence = Character.toUpperCase(name.charAt(0)) + name.substring(1) + rest;
    return new Finding(
        code, building.fileName(item.id()), 0, item.id().step(), item.guid(), sentence);
  }
}
