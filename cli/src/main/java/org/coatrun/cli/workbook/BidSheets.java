package org.coatrun.cli.workbook;

import java.util.List;
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

  BidSheets(Job job, BidAmounts amounts) {
    this.amounts = amounts;
    rates = new Rates(job);
    material = new MaterialRows(amounts, job, rates);
    labour = new LabourRows(amounts, job, rates, material);
    programme = new ProgrammeRows(amounts, job, rates, labour);
    money = new MoneyRows(amounts, rates, material, labour, programme.workingDays());
  }

  List<Sheet> sheets() {
    return List.of(
        rates.sheet(),
        material.sheet(),
        labour.sheet(),
        money.sheet(),
        programme.sheet(),
        InspectionRows.of(amounts.inspection()));
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
