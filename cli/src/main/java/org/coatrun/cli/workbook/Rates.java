package org.coatrun.cli.workbook;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.coatrun.shared.bid.labour.AccessWords;
import org.coatrun.shared.bid.material.CoatKind;
import org.coatrun.shared.job.HeightBand;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.Labour;
import org.coatrun.shared.job.MaterialSpec;
import org.coatrun.shared.job.Prices;
import org.coatrun.shared.units.Share;

/** The sheet of rates and prices: its cells are what the formulas of other sheets use. */
final class Rates {

  static final String SHEET = "Rates";

  private static final int VALUE = 2;

  private final SheetRows rows;
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final Job job;

  Rates(Job job, Optional<String> mark) {
    rows = new SheetRows(SHEET, mark);
    this.job = job;
    rows.add(Cell.text("Rates and prices", Style.TITLE));
    rows.add(
        Cell.text(
            "The cells with a frame are there to be changed: material, hours and money follow."
                + " Deliveries, dates and inspection do not; run the program again for those."));
    prices(job.prices());
    material(job.material());
    labour(job.labour());
  }

  /** The cell of a rate as formulas name it. */
  String cell(String key) {
    Integer row = places.get(key);
    if (row == null) {
      throw new IllegalArgumentException("no such rate: " + key);
    }
    return rows.reference(row, VALUE);
  }

  static String waste(CoatKind kind) {
    return "material.waste." + word(kind);
  }

  static String rate(CoatKind kind) {
    return "labour.rates." + word(kind);
  }

  static String factor(int band) {
    return "labour.bands[" + (band + 1) + "].factor";
  }

  /** What a bag gives in place where nothing is lost, in board feet. */
  static final String YIELD = "yield";

  Sheet sheet() {
    return rows.sheet(52, 14, 14, 34);
  }

  private static String word(CoatKind kind) {
    return kind.name().toLowerCase(java.util.Locale.ROOT);
  }

  private void prices(Prices prices) {
    group("Prices");
    String money = prices.currency();
    input("prices.bag", "a bag of material, delivered", prices.bag(), money);
    input("prices.bonding-gallon", "a gallon of bonding coat", prices.bondingGallon(), money);
    input("prices.person-hour", "an hour of one person", prices.personHour(), money);
    input("prices.machine-day", "a day of a machine with its hose", prices.machineDay(), money);
    input("prices.lift-day", "a day of lift or scaffold", prices.liftDay(), money);
    input("prices.delivery", "a truck", prices.delivery(), money);
    share("prices.overhead", "overhead on cost", prices.overhead());
    share("prices.profit", "profit on cost and overhead", prices.profit());
  }

  private void material(MaterialSpec spec) {
    group("Material and machine");
    input("material.bag", "weight of a bag", spec.bag().pounds(), "lb");
    input("material.density", "density in place", spec.density().poundsPerCubicFoot(), "pcf");
    int row =
        rows.add(
            Cell.text("board feet in place of a bag where nothing is lost"),
            Cell.formula(
                cell("material.bag") + "*12/" + cell("material.density"),
                BigDecimal.valueOf(spec.bag().pounds() * 12 / spec.density().poundsPerCubicFoot()),
                Style.HUNDREDTH),
            Cell.text("bf"));
    places.put(YIELD, row);
    for (CoatKind kind : CoatKind.values()) {
      share(waste(kind), "waste, " + kind.word(), kind.waste(spec.waste()));
    }
    double coverage = spec.bondingCoverage().squareFeet();
    input("material.bonding-coverage", "a gallon of bonding coat covers", coverage, "ft2");
    input("material.water-ratio", "water to dry material by weight", spec.waterRatio(), "");
    input("material.bags-per-pallet", "bags on a pallet", spec.bagsPerPallet(), "bags");
    double pallet = spec.palletArea().squareFeet();
    input("material.pallet-area", "floor a pallet takes, with its aisle", pallet, "ft2");
    input("material.pallets-high", "pallets on one another", spec.palletsHigh(), "");
    input("machine.rate", "bags that a machine sprays in an hour", job.machine().rate(), "bags/h");
    input("machine.machines", "machines side by side", job.machine().machines(), "");
  }

  private void labour(Labour labour) {
    group("Labour");
    input("labour.crew", "people on one machine", labour.crew(), "");
    input("labour.shift", "working hours of a day", labour.shift(), "h");
    for (CoatKind kind : CoatKind.values()) {
      input(
          rate(kind),
          "in place an hour, " + kind.word(),
          kind.boardFeetAnHour(labour.rates()),
          "bf/h");
    }
    List<HeightBand> bands = labour.bands();
    for (int i = 0; i < bands.size(); i++) {
      input(factor(i), "factor of hours, " + band(bands.get(i)), bands.get(i).factor(), "");
    }
    input("labour.per-floor", "crew hours of set-up on a floor", labour.perFloor(), "h");
    share("labour.patching", "patching and clean-up, of spraying", labour.patching());
  }

  /** A height band in words. */
  static String band(HeightBand band) {
    return "%s, up to %.0f ft".formatted(AccessWords.of(band.access()), band.upTo().feet());
  }

  private void group(String title) {
    rows.title(title);
    rows.head("what", "value", "unit", "key of the job file");
  }

  private void input(String key, String what, double value, String unit) {
    put(key, what, Cell.number(value, Style.INPUT), unit);
  }

  private void share(String key, String what, Share share) {
    put(key, what, Cell.number(share.fraction(), Style.INPUT_PERCENT), "");
  }

  private void put(String key, String what, Cell value, String unit) {
    places.put(key, rows.add(Cell.text(what), value, Cell.text(unit), Cell.text(key)));
  }
}
