package org.coatrun.ifcimport.entity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.coatrun.ifcimport.part21.StepRecord;
import org.coatrun.ifcimport.part21.Value;
import org.coatrun.ifcimport.schema.EntityType;

/**
 * One record, asked by the names of its attributes.
 *
 * <p>An attribute that the schema's entity does not have reads as one that is not given. Questions
 * that begin with {@code need} throw a {@link BrokenRecordException} where nothing usable is given;
 * the others are empty then. A reference to a missing record is broken in both.
 */
public final class Entity {

  private static final Value OMITTED = new Value.Omitted();
  private static final long[] NONE = {};

  private final IfcModel model;
  private final StepRecord record;
  private final EntityType type;

  Entity(IfcModel model, StepRecord record, EntityType type) {
    this.model = model;
    this.record = record;
    this.type = type;
  }

  public long id() {
    return record.id();
  }

  public IfcModel model() {
    return model;
  }

  /** The name of the entity as the standard spells it. */
  public String kind() {
    return type.name();
  }

  public EntityType type() {
    return type;
  }

  public boolean isA(String entityName) {
    return type.isA(entityName);
  }

  /** How many attributes stand in the file. */
  public int size() {
    return record.size();
  }

  /** Whether the schema's entity has this attribute at all. */
  public boolean has(String attribute) {
    return type.position(attribute) >= 0;
  }

  /** The value as written. */
  public Value value(String attribute) {
    int at = type.position(attribute);
    return at < 0 ? OMITTED : record.value(at);
  }

  /** The text, or empty. */
  public String text(String attribute) {
    return value(attribute).asText().orElse("");
  }

  public OptionalDouble number(String attribute) {
    return value(attribute).asReal();
  }

  public double needNumber(String attribute) {
    OptionalDouble number = number(attribute);
    if (number.isEmpty()) {
      throw broken(attribute + " is no number");
    }
    return number.getAsDouble();
  }

  public Optional<String> item(String attribute) {
    return value(attribute).asEnum();
  }

  public Optional<Boolean> flag(String attribute) {
    return value(attribute).asBoolean();
  }

  /** The number of the record referred to; it need not exist. */
  public OptionalLong refId(String attribute) {
    int at = type.position(attribute);
    return at < 0 ? OptionalLong.empty() : record.ref(at);
  }

  /** The numbers of the records referred to in a list; what is no reference is passed over. */
  public long[] refIds(String attribute) {
    int at = type.position(attribute);
    return at < 0 ? NONE : record.refs(at);
  }

  public Optional<Entity> ref(String attribute) {
    OptionalLong id = refId(attribute);
    return id.isPresent()
        ? Optional.of(model.get(id.getAsLong(), this, attribute))
        : Optional.empty();
  }

  public Entity need(String attribute) {
    OptionalLong id = refId(attribute);
    if (id.isEmpty()) {
      throw broken(attribute + " is missing");
    }
    return model.get(id.getAsLong(), this, attribute);
  }

  /** The records referred to in a list of references. */
  public List<Entity> refs(String attribute) {
    int at = type.position(attribute);
    Optional<long[]> ids = at < 0 ? Optional.of(NONE) : record.onlyRefs(at);
    if (ids.isEmpty()) {
      throw broken("something in " + attribute + " is no reference");
    }
    var all = new ArrayList<Entity>(ids.get().length);
    for (long id : ids.get()) {
      all.add(model.get(id, this, attribute));
    }
    return all;
  }

  public List<Entity> needRefs(String attribute) {
    List<Entity> all = refs(attribute);
    if (all.isEmpty()) {
      throw broken(attribute + " is empty");
    }
    return all;
  }

  /** The numbers in a list. */
  public List<Double> numbers(String attribute) {
    return numbers(value(attribute), attribute);
  }

  /** The numbers in a list that is itself part of an attribute. */
  public List<Double> numbers(Value list, String attribute) {
    List<Value> items = list.items();
    var all = new ArrayList<Double>(items.size());
    for (Value item : items) {
      OptionalDouble number = item.asReal();
      if (number.isEmpty()) {
        throw broken("something in " + attribute + " is no number");
      }
      all.add(number.getAsDouble());
    }
    return all;
  }

  /** That this record makes no sense, and why. */
  public BrokenRecordException broken(String reason) {
    return new BrokenRecordException(id(), kind(), reason);
  }

  @Override
  public String toString() {
    return "#" + id() + " " + kind();
  }
}
