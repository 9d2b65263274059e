package org.coatrun.cli.workbook;

import java.util.List;
import java.util.Optional;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.shared.bid.amounts.BasisLine;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.job.Job;

/** The sheets of a bid: rates, and what material, labour, money and days are by them. */
final class BidSheets {

  private final BidAmounts amounts;
  private final Rates rates;
  private final MaterialRows material;
  private final LabourRows labour;
  private final ProgrammeRows programme;
  private final MoneyRows money;
  private final Optional<String> mark;

  /**
   * @param mark of an invented listing, to stand on top of each sheet
   */
  BidSheets(Job job, BidAmounts amounts, Optional<String> mark) {
    this.amounts = amounts;
    this.mark = mark;
    rates = new Rates(job, mark);
    material = new MaterialRows(amounts, job, rates, mark);
    labour = new LabourRows(amounts, job, rates, material, mark);
    programme = new ProgrammeRows(amounts, job, rates, labour, mark);
    money = new MoneyRows(amounts, rates, material, labour, programme.workingDays(), mark);
  }

  List<Sheet> sheets() {
    return List.of(
        rates.sheet(),
        material.sheet(),
        labour.sheet(),
        money.sheet(),
        programme.sheet(),
        InspectionRows.of(amounts.inspection(), mark));
  }

  BidAmounts amounts() {
    return amounts;
  }

  List<BasisLine> basis() {
    return amounts.basis();
  }

  String bags() {
    return material.wholeBags();
  }

  String crewHours() {
    return labour.crewHours();
  }

  String days() {
    return programme.workingDays();
  }

  String total() {
    return money.total();
  }
}
