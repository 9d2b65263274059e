package org.coatrun.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.inspection.FieldReading;
import org.coatrun.shared.bid.inspection.FieldSheetReader;
import org.coatrun.shared.bid.inspection.InspectionJudge;
import org.coatrun.shared.bid.inspection.InspectionJudgement;
import org.coatrun.shared.bid.programme.FloorCheck;
import org.coatrun.shared.bid.programme.ProgrammePlan;
import org.coatrun.shared.job.UnitSystem;
import org.coatrun.shared.yaml.CsvTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The amounts of the demonstration building as they stand in files. */
class AmountFilesTest {

  private static BidAmounts amounts;

  @BeforeAll
  static void takeOff() throws Exception {
    amounts = Demonstration.read().results().amounts().orElseThrow();
  }

  private static <T> CsvTable written(List<Column<T>> columns, List<T> rows) throws IOException {
    StringWriter text = new StringWriter();
    org.coatrun.cli.report.CsvTable.write(text, columns, rows);
    return CsvTable.parse("written.csv", text.toString());
  }

  private static CsvTable material() throws IOException {
    return written(MaterialColumns.ALL, MaterialColumns.rows(amounts));
  }

  private static double sum(CsvTable csv, String by, String column) {
    return csv.rows().stream()
        .filter(row -> row.cells().get(csv.column("by")).equals(by))
        .mapToDouble(row -> Double.parseDouble(row.cells().get(csv.column(column))))
        .sum();
  }

  /** Each cell is rounded once, to six decimals or nine: sums differ by that and no more. */
  @ParameterizedTest
  @ValueSource(strings = {"floor", "section", "role", "rule", "kind"})
  void materialAddsUpToTheJob(String by) throws IOException {
    CsvTable csv = material();
    for (String column : List.of("pieces", "area_ft2", "board_feet", "bags", "flute_fill_m3")) {
      assertThat(sum(csv, by, column)).isCloseTo(sum(csv, "job", column), within(1e-4));
    }
    assertThat(sum(csv, "job", "bags")).isGreaterThan(100);
  }

  @Test
  void programmeUsesAllThatTrucksBring() throws IOException {
    CsvTable csv = written(ProgrammeColumns.DAYS, ProgrammeColumns.days(amounts.programme()));
    long bags = 0;
    long delivered = 0;
    for (CsvTable.Row row : csv.rows()) {
      bags += Long.parseLong(row.cells().get(csv.column("bags")));
      delivered += Long.parseLong(row.cells().get(csv.column("bags_delivered")));
      assertThat(row.cells().get(csv.column("stock_bags")))
          .isEqualTo(Long.toString(delivered - bags));
    }
    assertThat(bags).isEqualTo(amounts.order().bags()).isEqualTo(delivered);
  }

  /** On the day that a floor begins, and on no other. */
  @Test
  void programmeSaysWhatIsCheckedBeforeEachFloor() throws IOException {
    ProgrammePlan plan = amounts.programme();
    CsvTable csv = written(ProgrammeColumns.daysWithChecks(plan), ProgrammeColumns.days(plan));
    int found = 0;
    for (CsvTable.Row row : csv.rows()) {
      int day = Integer.parseInt(row.cells().get(csv.column("day")));
      String checks = row.cells().get(csv.column("checks_before"));
      for (FloorCheck check : plan.checks()) {
        if (check.firstDay() == day) {
          assertThat(checks).contains(check.floor() + ": ", check.check());
          found++;
        }
      }
      assertThat(checks.isEmpty())
          .isEqualTo(plan.checks().stream().noneMatch(c -> c.firstDay() == day));
    }
    assertThat(found).isEqualTo(plan.checks().size()).isPositive();
  }

  @Test
  void theFieldSheetComesBackBlankAndIsNotCalledGood() throws IOException {
    StringWriter text = new StringWriter();
    org.coatrun.cli.report.CsvTable.write(
        text, InspectionColumns.sheet(UnitSystem.US, List.of()), amounts.inspection().rows());
    List<FieldReading> back = FieldSheetReader.parse("inspection.csv", text.toString());
    assertThat(back).hasSameSizeAs(amounts.inspection().rows());
    InspectionJudgement judged = InspectionJudge.judge("inspection.csv", back, UnitSystem.US);
    assertThat(judged.passes()).isFalse();
    assertThat(judged.resprays()).isEmpty();
    assertThat(judged.floors()).hasSameSizeAs(amounts.inspection().floors());
  }

  @Test
  void jsonSaysTheSameAsTheRecords() throws IOException {
    StringWriter text = new StringWriter();
    ObjectMapper mapper = new ObjectMapper();
    try (JsonGenerator json = mapper.createGenerator(text)) {
      json.writeStartObject();
      AmountsJson.write(json, amounts);
      json.writeEndObject();
    }
    JsonNode bid = mapper.readTree(text.toString());
    assertThat(bid.at("/material/bags").asLong()).isEqualTo(amounts.order().bags());
    assertThat(bid.at("/money/total").decimalValue()).isEqualByComparingTo(amounts.money().total());
    assertThat(bid.at("/programme/days").size())
        .isGreaterThanOrEqualTo(amounts.programme().workingDays());
    assertThat(bid.at("/inspection/readings").asLong())
        .isEqualTo(amounts.inspection().rows().size());
    assertThat(bid.at("/alternates").size()).isEqualTo(amounts.alternates().size());
    assertThat(bid.at("/basis").size()).isEqualTo(amounts.basis().size());
    assertThat(bid.at("/labour/person_hours").asDouble())
        .isCloseTo(amounts.labour().personHours(), within(1e-6));
  }
}
