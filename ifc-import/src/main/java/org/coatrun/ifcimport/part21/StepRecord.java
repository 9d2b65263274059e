package org.coatrun.ifcimport.part21;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One decoded record: an id, an entity name, and its parameters in the file's order.
 *
 * <p>A complex instance {@code #1=(A(..)B(..))} carries its parts; its own name is theirs joined by
 * {@code +}, its own parameters are theirs one after the other.
 */
public final class StepRecord {

  private static final Value OMITTED = new Value.Omitted();

  private final long id;
  private final String name;
  private final Parameters parameters;
  private final List<StepRecord> parts;

  private StepRecord(long id, String name, Parameters parameters, List<StepRecord> parts) {
    this.id = id;
    this.name = Objects.requireNonNull(name);
    this.parameters = parameters;
    this.parts = parts;
  }

  /** The parameters of a record, decoded already or when asked for. */
  private interface Parameters {
    int size();

    Value get(int position);

    List<Value> all();

    /** The id referred to. */
    default OptionalLong ref(int position) {
      return get(position).asRef();
    }

    /** The ids of a list of nothing but references; null where it is anything else. */
    default long[] onlyRefs(int position) {
      List<Value> items = get(position).items();
      long[] ids = refsAmong(items);
      return ids.length == items.size() ? ids : null;
    }
  }

  private static long[] refsAmong(List<Value> items) {
    long[] ids = new long[items.size()];
    int count = 0;
    for (Value item : items) {
      OptionalLong id = item.asRef();
      if (id.isPresent()) {
        ids[count++] = id.getAsLong();
      }
    }
    return Arrays.copyOf(ids, count);
  }

  private record Decoded(List<Value> all) implements Parameters {
    @Override
    public int size() {
      return all.size();
    }

    @Override
    public Value get(int position) {
      return all.get(position);
    }
  }

  /** Parameters as they stand in the file; each begins at a start, the last start is the end. */
  private record Written(byte[] bytes, int[] starts) implements Parameters {
    @Override
    public int size() {
      return starts.length - 1;
    }

    @Override
    public Value get(int position) {
      return RecordParser.plainValue(bytes, starts[position], starts[starts.length - 1]);
    }

    @Override
    public List<Value> all() {
      return IntStream.range(0, size()).mapToObj(this::get).toList();
    }

    /** Without a value between, as no question is asked more often. */
    @Override
    public OptionalLong ref(int position) {
      int at = starts[position];
      return bytes[at] == '#'
          ? OptionalLong.of(RecordParser.plainReference(bytes, at + 1))
          : Parameters.super.ref(position);
    }

    @Override
    public long[] onlyRefs(int position) {
      int from = starts[position];
      if (bytes[from] != '(' || bytes[from + 1] != '#') {
        return Parameters.super.onlyRefs(position);
      }
      int count = 1;
      int to = from + 1;
      for (; bytes[to] != ')'; to++) {
        count += bytes[to] == ',' ? 1 : 0;
      }
      long[] ids = new long[count];
      int at = from + 1;
      for (int i = 0; i < count; i++) {
        if (bytes[at] != '#') {
          return Parameters.super.onlyRefs(position);
        }
        ids[i] = RecordParser.plainReference(bytes, at + 1);
        while (bytes[at] != ',' && bytes[at] != ')') {
          at++;
        }
        at++;
      }
      return ids;
    }
  }

  /** A simple record in plain writing, whose parameters are decoded when asked for. */
  static StepRecord plain(long id, String name, byte[] bytes, int[] starts) {
    return new StepRecord(id, name, new Written(bytes, starts), List.of());
  }

  /** A simple record. */
  static StepRecord simple(long id, String name, List<Value> values) {
    return new StepRecord(id, name, new Decoded(List.copyOf(values)), List.of());
  }

  /** A complex instance of at least one part. */
  static StepRecord complex(long id, List<StepRecord> parts) {
    String name = parts.stream().map(StepRecord::name).collect(Collectors.joining("+"));
    List<Value> all = parts.stream().flatMap(p -> p.values().stream()).toList();
    return new StepRecord(id, name, new Decoded(all), List.copyOf(parts));
  }

  /** The instance number. */
  public long id() {
    return id;
  }

  /** The entity name, upper case. */
  public String name() {
    return name;
  }

  /** How many parameters stand in the file. */
  public int size() {
    return parameters.size();
  }

  /** All parameters, in the file's order. */
  public List<Value> values() {
    return parameters.all();
  }

  /**
   * The parameter at a position, from 0; {@code $} where the record is shorter.
   *
   * @throws IndexOutOfBoundsException for a negative position
   */
  public Value value(int position) {
    return isGiven(position) ? parameters.get(position) : OMITTED;
  }

  /** The parts of a complex instance; empty for a simple one. */
  public List<StepRecord> parts() {
    return parts;
  }

  /** The id referred to at a position. */
  public OptionalLong ref(int position) {
    return isGiven(position) ? parameters.ref(position) : OptionalLong.empty();
  }

  /** The ids of the references in the list at a position; what is no reference is left out. */
  public long[] refs(int position) {
    Optional<long[]> only = onlyRefs(position);
    return only.isPresent() ? only.get() : refsAmong(value(position).items());
  }

  /** The ids of the list at a position; empty where anything in it is no reference. */
  public Optional<long[]> onlyRefs(int position) {
    return isGiven(position)
        ? Optional.ofNullable(parameters.onlyRefs(position))
        : Optional.of(new long[0]);
  }

  private boolean isGiven(int position) {
    if (position < 0) {
      throw new IndexOutOfBoundsException("a record has no position " + position);
    }
    return position < parameters.size();
  }

  /** The text at a position. */
  public Optional<String> text(int position) {
    return value(position).asText();
  }

  /** The number at a position, written as real or integer. */
  public OptionalDouble real(int position) {
    return value(position).asReal();
  }

  /** The integer at a position. */
  public OptionalLong integer(int position) {
    return value(position).asInt();
  }

  /** The enumeration item at a position, upper case. */
  public Optional<String> item(int position) {
    return value(position).asEnum();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StepRecord r
        && id == r.id
        && name.equals(r.name)
        && values().equals(r.values())
        && parts.equals(r.parts);
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, name, values());
  }

  @Override
  public String toString() {
    return "#" + id + "=" + name + values();
  }
}
