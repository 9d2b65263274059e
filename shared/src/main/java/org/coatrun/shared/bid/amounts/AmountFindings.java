package org.coatrun.shared.bid.amounts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.coatrun.shared.bid.labour.LabourBill;
import org.coatrun.shared.bid.labour.LabourLine;
import org.coatrun.shared.bid.labour.Reach.Standing;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.HeightBand;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;

/** Findings about heights and bonding coat: one for each floor, about all its elements. */
final class AmountFindings {

  private AmountFindings() {}

  static List<Finding> of(MaterialBill material, LabourBill labour) {
    List<Finding> findings = new ArrayList<>();
    floors(labour, Standing.ABOVE)
        .forEach((floor, lines) -> findings.add(above(floor, lines, labour)));
    floors(labour, Standing.UNKNOWN).forEach((floor, lines) -> findings.add(unknown(floor, lines)));
    material
        .byFloor()
        .forEach(
            (floor, sum) -> {
              if (sum.bonding().squareMetres() > 0) {
                findings.add(bonding(floor, sum.bonding()));
              }
            });
    return findings;
  }

  private static Map<String, List<LabourLine>> floors(LabourBill labour, Standing standing) {
    return labour.lines().stream()
        .filter(line -> line.reach().standing() == standing)
        .collect(Collectors.groupingBy(LabourLine::floor, LinkedHashMap::new, Collectors.toList()));
  }

  private static Finding above(String floor, List<LabourLine> lines, LabourBill labour) {
    List<HeightBand> bands = labour.basis().bands();
    MaterialLine highest =
        lines.stream()
            .map(LabourLine::material)
            .max(Comparator.comparing(m -> m.item().place().top().orElseThrow()))
            .orElseThrow();
    return Finding.of(
        WorkFinding.ABOVE_HEIGHT_BANDS,
        elements(lines.size())
            + " over '"
            + floor
            + (lines.size() == 1 ? "' reaches above" : "' reach above")
            + " the last height band of "
            + feet(bands.get(bands.size() - 1).upTo())
            + "; the highest, "
            + highest.item().called()
            + ", reaches "
            + feet(highest.item().place().top().orElseThrow())
            + ".");
  }

  private static Finding unknown(String floor, List<LabourLine> lines) {
    return Finding.of(
        WorkFinding.HEIGHT_UNKNOWN,
        "The height above '"
            + floor
            + "' is not known of "
            + elements(lines.size())
            + ", such as "
            + lines.get(0).material().item().called()
            + ".");
  }

  private static Finding bonding(String floor, Area area) {
    return Finding.of(
        WorkFinding.BONDING_COAT,
        String.format(Locale.ROOT, "%,.0f ft2 (%,.1f m2)", area.squareFeet(), area.squareMetres())
            + " of galvanised deck over '"
            + floor
            + "' take a bonding coat first.");
  }

  private static String elements(int number) {
    return number == 1 ? "1 element" : number + " elements";
  }

  private static String feet(Length length) {
    return String.format(
        Locale.ROOT, "%s ft (%.1f m)", Numbers.plain(length.feet()), length.metres());
  }
}
