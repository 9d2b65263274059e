package org.coatrun.cli.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.coatrun.cli.damage.StepRecords.Way;
import org.coatrun.cli.field.FieldFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * In a real model, damage to the records of one element changes no row of any other that does not
 * name it, to the byte: what it covered, or carried, and so was named by, is bare without it.
 */
class RealDamageStaysTest {

  private static final String MODEL = "models/housing-steelwork.2x3.ifc";
  private static final int ELEMENTS = 3;

  @TempDir private Path folder;

  @Test
  void damageToOneElementLeavesEachOtherRowAsItWas() throws IOException {
    String text = Files.readString(FieldFiles.of(MODEL), StandardCharsets.ISO_8859_1);
    var records = new StepRecords(text);
    Map<String, String> whole = MemberRows.of(text, folder);
    assertThat(whole).hasSizeGreaterThan(50);
    var random = new Random(7);
    List<Long> elements = new ArrayList<>(records.of("IFCBEAM"));
    elements.addAll(records.of("IFCCOLUMN"));
    elements.removeIf(id -> records.kind(id).endsWith("TYPE"));
    Collections.shuffle(elements, random);
    for (long element : elements.subList(0, ELEMENTS)) {
      List<Long> owned = new ArrayList<>(records.ownedBy(element));
      for (Way way : Way.values()) {
        long id = way == Way.LOST ? element : owned.get(random.nextInt(owned.size()));
        requireSame(records.text(element), records.damaged(id, way), whole, way + " #" + id);
      }
    }
  }

  private void requireSame(String element, String damaged, Map<String, String> whole, String said)
      throws IOException {
    String[] quoted = element.split("'", -1);
    String guid = quoted[1];
    String mark = quoted[quoted.length - 2];
    Map<String, String> rows = MemberRows.of(damaged, folder);
    Map<String, String> expected = new TreeMap<>(whole);
    expected.remove(guid);
    expected.values().removeIf(row -> row.contains(guid) || row.contains(mark));
    assertThat(expected).describedAs(said).hasSizeGreaterThan(whole.size() / 2);
    expected.forEach((g, row) -> assertThat(rows.get(g)).describedAs(said).isEqualTo(row));
  }
}
