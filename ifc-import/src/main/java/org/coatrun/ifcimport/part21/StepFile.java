package org.coatrun.ifcimport.part21;

import java.nio.file.Path;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.finding.Finding;

/**
 * An ISO 10303-21 file, open: its records are indexed, and decoded when asked for.
 *
 * <p>All questions may be asked from any thread. A fault stays inside its record: it becomes a
 * finding, and the rest is read.
 */
public final class StepFile implements AutoCloseable {

  private final Opened opened;

  StepFile(Opened opened) {
    this.opened = opened;
  }

  /**
   * Opens and indexes a file; zip and gzip are unpacked, whatever the file is called.
   *
   * @throws ModelFileException where the file is missing, is no model, or is truncated and the
   *     options do not accept that; with one sentence for the user
   */
  public static StepFile open(Path file, StepOptions options) {
    return new StepFile(Opening.open(file, options));
  }

  /** The name of the file without folders. */
  public String fileName() {
    return opened.fileName();
  }

  /** What the header section says. */
  public Header header() {
    return opened.header();
  }

  /** How many records the file holds. */
  public long count() {
    return opened.index().count();
  }

  /** The record with an id, decoded now; empty where there is none. */
  public Optional<StepRecord> find(long id) {
    int number = opened.index().find(id);
    return number < 0 ? Optional.empty() : Optional.of(decode(number, id));
  }

  /**
   * The record with an id.
   *
   * @throws NoSuchElementException where there is none
   */
  public StepRecord record(long id) {
    return find(id)
        .orElseThrow(() -> new NoSuchElementException("no record #" + id + " in " + fileName()));
  }

  /**
   * The first parameter of a record, blanks around it taken off, where it is a text in plain
   * writing; empty where it is anything else. The record is not decoded.
   */
  public Optional<String> plainFirstText(long id) {
    int number = opened.index().find(id);
    return number < 0 ? Optional.empty() : opened.index().plainFirstText(number, opened.source());
  }

  /**
   * The first parameters of records as {@link #plainFirstText} gives them, but in upper case and
   * each once.
   *
   * @param others takes the ids of the records for which that gives nothing
   */
  public Set<String> plainFirstTexts(long[] ids, LongConsumer others) {
    return new FirstTexts(opened.index(), opened.source()).of(ids, others);
  }

  /**
   * Copies a record as it stands in the file, from its number to its semicolon, perhaps with blanks
   * behind.
   *
   * @return its length; -1 where there is none, and where it is a complex instance or longer than
   *     the array
   */
  public int written(long id, byte[] into) {
    int number = opened.index().find(id);
    return number < 0 ? -1 : opened.index().written(number, opened.source(), into);
  }

  /** Whether there is a record with an id. */
  public boolean contains(long id) {
    return opened.index().find(id) >= 0;
  }

  /** The ids of all records of exactly this entity, subtypes not included, in the file's order. */
  public long[] idsOf(String upperCaseEntityName) {
    int name = opened.names().known(upperCaseEntityName);
    return name < 0 ? new long[0] : opened.index().idsOf(name);
  }

  /** The names of all entities that occur, upper case, sorted; broken records have none. */
  public SortedSet<String> entityNames() {
    SortedSet<String> all = new TreeSet<>();
    for (int name = 0; name < opened.names().size(); name++) {
      if (opened.index().isUsed(name)) {
        all.add(opened.names().name(name));
      }
    }
    all.remove("");
    return all;
  }

  /** The entity name of a record, upper case, without decoding it; empty where there is none. */
  public String nameOf(long id) {
    int number = opened.index().find(id);
    return number < 0 ? "" : opened.names().name(opened.index().name(number));
  }

  /** The line that a record begins in, from 1; 0 where there is no such record. */
  public long lineOf(long id) {
    int number = opened.index().find(id);
    return number < 0 ? 0 : opened.lines().lineOf(opened.index().position(number));
  }

  /** The faults found so far, sorted; decoding may add to them. */
  public List<Finding> findings() {
    return opened.log().sorted();
  }

  private StepRecord decode(int number, long id) {
    return opened.index().decode(number, opened.source(), new FaultsOf(opened, number, id));
  }

  /** Where the faults of a record go. No lambda, which would be dearer: each record needs one. */
  private record FaultsOf(Opened opened, int number, long id) implements FaultSink {
    @Override
    public void fault(FileFinding code, String sentence) {
      opened.log().add(code, opened.index().position(number), id, "#" + id + ": " + sentence);
    }
  }

  /** Gives back what the file holds; temporary files go. */
  @Override
  public void close() {
    opened.source().close();
  }
}
