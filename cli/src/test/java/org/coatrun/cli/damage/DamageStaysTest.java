package org.coatrun.cli.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.coatrun.cli.damage.StepRecords.Way;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Damage to the records of one element changes no row of another that stands apart from it. What
 * tells of the building as a whole may change: a frame without any column is not told into classes,
 * so there are two.
 */
class DamageStaysTest {

  /** An element whose own record says nothing has no GlobalId either. */
  private static final String EMPTIED = "";

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Way.class)
  void staysWithAnElementThatSharesNothing(Way way) throws IOException {
    var records = new StepRecords(ApartModel.text());
    Map<String, String> whole = MemberRows.of(ApartModel.text(), folder);
    assertThat(whole).hasSize(ApartModel.ELEMENTS.length);
    for (long element : new long[] {2000, 5000}) {
      Set<Long> owned = records.ownedBy(element);
      assertThat(owned).describedAs("all that is the element's").hasSize(47);
      for (long id : owned) {
        requireSame(records, id, way, whole, Set.of(guid(element), EMPTIED));
      }
    }
  }

  /** What the damage must not reach is told by the text alone: all but what owns the record. */
  private void requireSame(
      StepRecords records, long id, Way way, Map<String, String> whole, Set<String> but)
      throws IOException {
    String said = records.kind(id) + " #" + id + " " + way;
    Map<String, String> expected = new TreeMap<>(whole);
    Map<String, String> rows = MemberRows.of(records.damaged(id, way), folder);
    expected.keySet().removeAll(but);
    rows.keySet().removeAll(but);
    assertThat(rows.keySet()).describedAs(said).isEqualTo(expected.keySet());
    rows.forEach((guid, row) -> assertThat(row).describedAs(said).isEqualTo(expected.get(guid)));
  }

  private static String guid(long element) {
    return "000000000000000000" + element;
  }
}
