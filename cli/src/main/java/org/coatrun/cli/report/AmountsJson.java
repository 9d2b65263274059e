package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.bid.amounts.AlternateAmounts;
import org.coatrun.shared.bid.amounts.BasisLine;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.amounts.CostItem;
import org.coatrun.shared.bid.amounts.CostSheet;
import org.coatrun.shared.bid.amounts.Headline;
import org.coatrun.shared.bid.inspection.InspectionPlan;
import org.coatrun.shared.bid.labour.LabourBill;
import org.coatrun.shared.bid.labour.LabourSum;
import org.coatrun.shared.bid.material.MaterialOrder;
import org.coatrun.shared.bid.programme.FloorCheck;
import org.coatrun.shared.bid.programme.ProgrammePlan;
import org.coatrun.shared.units.Pressure;

/** The amounts of a bid as JSON: material, labour, money, programme, inspection, alternates. */
final class AmountsJson {

  private static final List<Column<BasisLine>> BASIS =
      List.of(
          Column.of("key", BasisLine::key),
          Column.of("what", BasisLine::what),
          Column.of("value", BasisLine::value),
          Column.of("source", BasisLine::source),
          Column.of("stated", BasisLine::stated));

  private static final List<Column<CostItem>> COSTS =
      List.of(
          Column.of("what", CostItem::what),
          Column.of("key", CostItem::key),
          Column.of("amount", item -> Rounded.plain(item.amount())),
          Column.of("unit", CostItem::unit),
          Column.of("price", item -> Rounded.plain(item.price())),
          Column.of("cost", CostItem::cost));

  private static final List<Column<FloorCheck>> CHECKS =
      List.of(
          Column.of("floor", FloorCheck::floor),
          Column.of("first_day", FloorCheck::firstDay),
          Column.of("check", FloorCheck::check));

  private final JsonGenerator json;

  private AmountsJson(JsonGenerator json) {
    this.json = json;
  }

  /** Writes the fields into the object that stands open. */
  static void write(JsonGenerator json, BidAmounts amounts) throws IOException {
    new AmountsJson(json).write(amounts);
  }

  private void write(BidAmounts amounts) throws IOException {
    material(amounts);
    labour(amounts.labour());
    money(amounts.money());
    programme(amounts.programme());
    inspection(amounts.inspection());
    alternates(amounts.alternates());
    JsonRows.rows(json, "basis", BASIS, amounts.basis());
  }

  private void material(BidAmounts amounts) throws IOException {
    MaterialOrder order = amounts.order();
    json.writeObjectFieldStart("material");
    json.writeNumberField("bags", order.bags());
    number("bags_exact", order.exactBags());
    number("theoretical_yield_bf", order.theoreticalYield().boardFeet());
    number("adjusted_yield_bf", order.adjustedYield().boardFeet());
    json.writeNumberField("pallets", order.pallets());
    json.writeNumberField("truckloads", order.truckloads());
    number("ordered_kg", order.ordered().kilograms());
    number("dry_in_place_kg", order.dry().kilograms());
    json.writeNumberField("storage_m2", Rounded.fine(order.storage().squareMetres()));
    number("water_l", order.water().litres());
    number("bonding_coat_gal", order.bondingGallons());
    json.writeNumberField("elements", amounts.material().elements());
    json.writeNumberField("without_thickness", amounts.material().elementsWithoutThickness());
    JsonRows.rows(json, "sums", MaterialColumns.ALL, MaterialColumns.rows(amounts));
    json.writeEndObject();
  }

  private void labour(LabourBill labour) throws IOException {
    json.writeObjectFieldStart("labour");
    hours(labour.total());
    number("person_hours", labour.personHours());
    json.writeNumberField("lift_days", labour.liftDays());
    json.writeArrayFieldStart("floors");
    for (Map.Entry<String, LabourSum> floor : labour.byFloor().entrySet()) {
      json.writeStartObject();
      json.writeStringField("floor", floor.getKey());
      hours(floor.getValue());
      json.writeEndObject();
    }
    json.writeEndArray();
    spraying("spraying_by_kind", labour.sprayingByKind());
    spraying("spraying_by_role", labour.sprayingByRole());
    spraying("spraying_by_access", labour.sprayingByAccess());
    json.writeEndObject();
  }

  private void hours(LabourSum sum) throws IOException {
    number("crew_hours", sum.crewHours());
    number("spraying_h", sum.spraying());
    number("waiting_h", sum.waiting());
    number("set_up_h", sum.setUp());
    number("patching_h", sum.patching());
    number("by_lift_h", sum.byLift());
  }

  private void spraying(String name, Map<String, Double> hours) throws IOException {
    json.writeObjectFieldStart(name);
    for (Map.Entry<String, Double> entry : hours.entrySet()) {
      number(entry.getKey(), entry.getValue());
    }
    json.writeEndObject();
  }

  private void money(CostSheet money) throws IOException {
    json.writeObjectFieldStart("money");
    json.writeStringField("currency", money.currency());
    JsonRows.rows(json, "items", COSTS, money.items());
    json.writeNumberField("cost", money.cost());
    json.writeNumberField("overhead", money.overhead());
    json.writeNumberField("profit", money.profit());
    json.writeNumberField("total", money.total());
    json.writeBooleanField("complete", money.complete());
    json.writeStringField("lacks", money.lacks());
    json.writeEndObject();
  }

  private void programme(ProgrammePlan plan) throws IOException {
    json.writeObjectFieldStart("programme");
    json.writeNumberField("working_days", plan.workingDays());
    json.writeNumberField("bags", plan.bags());
    json.writeNumberField("trucks", plan.trucks());
    if (plan.room().isPresent()) {
      json.writeNumberField("room_bags", plan.room().getAsLong());
    }
    JsonRows.rows(json, "floors", ProgrammeColumns.FLOORS, plan.floors());
    JsonRows.rows(json, "days", ProgrammeColumns.DAYS, ProgrammeColumns.days(plan));
    JsonRows.rows(json, "deliveries", ProgrammeColumns.DELIVERIES, plan.deliveries());
    JsonRows.rows(json, "checks", CHECKS, plan.checks());
    json.writeEndObject();
  }

  private void inspection(InspectionPlan plan) throws IOException {
    json.writeObjectFieldStart("inspection");
    json.writeNumberField("readings", plan.readings());
    json.writeNumberField("density_samples", plan.samples());
    json.writeNumberField("bond_samples", plan.samples());
    if (plan.leastBond().isPresent()) {
      number("least_bond_pa", plan.leastBond().map(Pressure::pascals).orElseThrow());
    }
    JsonRows.rows(json, "floors", InspectionColumns.FLOORS, plan.floors());
    json.writeEndObject();
  }

  private void alternates(List<AlternateAmounts> alternates) throws IOException {
    json.writeArrayFieldStart("alternates");
    for (AlternateAmounts alternate : alternates) {
      json.writeStartObject();
      json.writeStringField("name", alternate.name());
      json.writeStringField("changes", String.join("; ", alternate.changes()));
      json.writeStringField("lacks", alternate.lacks());
      headline("amounts", alternate.headline());
      headline("difference", alternate.difference());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void headline(String name, Headline line) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("elements", line.elements());
    json.writeNumberField("without_thickness", line.withoutThickness());
    json.writeNumberField("area_m2", Rounded.fine(line.area().squareMetres()));
    json.writeNumberField("in_place_m3", Rounded.fine(line.inPlace().cubicMetres()));
    json.writeNumberField("bags", line.bags());
    number("person_hours", line.personHours());
    json.writeNumberField("working_days", line.workingDays());
    json.writeNumberField("total", line.total());
    json.writeEndObject();
  }

  private void number(String name, double value) throws IOException {
    json.writeNumberField(name, Rounded.plain(value));
  }
}
