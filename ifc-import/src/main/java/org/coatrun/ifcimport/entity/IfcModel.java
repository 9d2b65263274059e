package org.coatrun.ifcimport.entity;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.coatrun.ifcimport.part21.StepFile;
import org.coatrun.ifcimport.part21.StepRecord;
import org.coatrun.ifcimport.schema.EntityType;
import org.coatrun.ifcimport.schema.Schema;

/** An open file read by a schema. Safe for several threads. */
public final class IfcModel {

  private final StepFile file;
  private final Schema schema;

  /** Of each kind the first record met whose attributes are more or fewer than the schema's. */
  private final Map<String, Long> wrongSizes = new ConcurrentHashMap<>();

  public IfcModel(StepFile file, Schema schema) {
    this.file = file;
    this.schema = schema;
  }

  public StepFile file() {
    return file;
  }

  public Schema schema() {
    return schema;
  }

  /** The record with that number; empty where it is missing or of an unknown kind. */
  public Optional<Entity> find(long id) {
    Optional<StepRecord> record = file.find(id);
    if (record.isEmpty()) {
      return Optional.empty();
    }
    Optional<EntityType> type = schema.type(record.get().name());
    return type.isPresent() ? Optional.of(entity(record.get(), type.get())) : Optional.empty();
  }

  /**
   * The record with that number.
   *
   * @throws BrokenRecordException where it is missing or of an unknown kind
   */
  public Entity get(long id) {
    Optional<StepRecord> record = file.find(id);
    if (record.isEmpty()) {
      throw new BrokenRecordException(id, "", "there is no such record");
    }
    return known(record.get());
  }

  /** The record that another refers to; where it is missing, the other is broken. */
  Entity get(long id, Entity from, String attribute) {
    Optional<StepRecord> record = file.find(id);
    if (record.isEmpty()) {
      throw BrokenRecordException.dangling(from.id(), from.kind(), attribute, id);
    }
    return known(record.get());
  }

  private Entity known(StepRecord record) {
    Optional<EntityType> type = schema.type(record.name());
    if (type.isEmpty()) {
      throw new BrokenRecordException(record.id(), record.name(), "this kind is not handled");
    }
    return entity(record, type.get());
  }

  private Entity entity(StepRecord record, EntityType type) {
    if (record.size() != type.attributes().size()) {
      wrongSizes.merge(type.name(), record.id(), Math::min);
    }
    return new Entity(this, record, type);
  }

  /**
   * Of each kind, in the order of their names, the lowest number among the records decoded so far
   * that have more or fewer attributes than the schema defines.
   */
  public SortedMap<String, Long> wrongSizes() {
    return new TreeMap<>(wrongSizes);
  }

  /** What kind of thing the record is, without decoding it. */
  public Optional<EntityType> typeOf(long id) {
    return schema.type(file.nameOf(id));
  }

  /** Whether the record is of the named entity or a subtype, without decoding it. */
  public boolean isA(long id, String entityName) {
    Optional<EntityType> type = typeOf(id);
    return type.isPresent() && type.get().isA(entityName);
  }

  /** Numbers of all records of the named entity and its subtypes, ascending. */
  public long[] idsOf(String entityName) {
    long[] ids =
        schema.kindsOf(entityName).stream()
            .map(file::idsOf)
            .flatMapToLong(LongStream::of)
            .toArray();
    Arrays.sort(ids);
    return ids;
  }
}
