package org.coatrun.ifcimport.part21;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * One parameter of a record, as written in the file.
 *
 * <p>The {@code as...} questions answer empty where the value is of another kind. They look through
 * {@link Typed}, so that {@code IFCLENGTHMEASURE(0.5)} and {@code 0.5} answer alike.
 */
public sealed interface Value {

  /** A reference {@code #id}; the record may not exist. */
  record Ref(long id) implements Value {}

  /** A string, decoded. */
  record Text(String text) implements Value {
    public Text {
      Objects.requireNonNull(text);
    }
  }

  /** A real; always finite. */
  record Real(double number) implements Value {}

  /** An integer. */
  record Int(long number) implements Value {}

  /**
   * An enumeration item without its dots, upper case; logicals are {@code T}, {@code F}, {@code U}.
   */
  @SuppressWarnings("JavaLangClash") // the standard's own word for it, always used as Value.Enum
  record Enum(String item) implements Value {
    public Enum {
      Objects.requireNonNull(item);
    }
  }

  /** A value that names its type, such as {@code IFCLABEL('x')}; the name is upper case. */
  record Typed(String name, Value inner) implements Value {
    public Typed {
      Objects.requireNonNull(name);
      Objects.requireNonNull(inner);
    }
  }

  /** An aggregate in parentheses; may be empty. */
  record ListOf(List<Value> values) implements Value {
    public ListOf {
      values = List.copyOf(values);
    }
  }

  /** {@code $}: no value given. */
  record Omitted() implements Value {}

  /** {@code *}: redeclared as derived in a subtype. */
  record Derived() implements Value {}

  /** A binary; the hexadecimal digits between the quotes, the first telling the unused bits. */
  record Binary(String digits) implements Value {
    public Binary {
      Objects.requireNonNull(digits);
    }
  }

  /**
   * A parameter that cannot be read; it keeps its place so that its neighbours keep theirs.
   *
   * @param text what stands in the file, shortened
   * @param reason why it cannot be read
   */
  record Faulty(String text, String reason) implements Value {
    public Faulty {
      Objects.requireNonNull(text);
      Objects.requireNonNull(reason);
    }
  }

  /**
   * Whether anything is given: false for {@code $}, {@code *}, a faulty value, or a typed one of
   * these.
   */
  default boolean isGiven() {
    Value v = unwrapped();
    return !(v instanceof Omitted || v instanceof Derived || v instanceof Faulty);
  }

  /** The value inside any number of types, or this. */
  default Value unwrapped() {
    Value v = this;
    while (v instanceof Typed typed) {
      v = typed.inner();
    }
    return v;
  }

  /** The name of the type that the value gives itself, upper case. */
  default Optional<String> typeName() {
    return this instanceof Typed typed ? Optional.of(typed.name()) : Optional.empty();
  }

  /** The id referred to. */
  default OptionalLong asRef() {
    return unwrapped() instanceof Ref ref ? OptionalLong.of(ref.id()) : OptionalLong.empty();
  }

  /** The string. */
  default Optional<String> asText() {
    return unwrapped() instanceof Text text ? Optional.of(text.text()) : Optional.empty();
  }

  /** The number, whether written as a real or as an integer. */
  default OptionalDouble asReal() {
    Value v = unwrapped();
    if (v instanceof Real real) {
      return OptionalDouble.of(real.number());
    }
    return v instanceof Int whole
        ? OptionalDouble.of((double) whole.number())
        : OptionalDouble.empty();
  }

  /** The integer; a real without a fraction counts. */
  default OptionalLong asInt() {
    Value v = unwrapped();
    if (v instanceof Int whole) {
      return OptionalLong.of(whole.number());
    }
    return v instanceof Real real && (double) (long) real.number() == real.number()
        ? OptionalLong.of((long) real.number())
        : OptionalLong.empty();
  }

  /** The enumeration item, upper case, without dots. */
  default Optional<String> asEnum() {
    return unwrapped() instanceof Enum item
        ? Optional.of(item.item().toUpperCase(Locale.ROOT))
        : Optional.empty();
  }

  /** True for {@code .T.}, false for {@code .F.}, empty for anything else, unknown included. */
  default Optional<Boolean> asBoolean() {
    return asEnum().filter(e -> e.equals("T") || e.equals("F")).map("T"::equals);
  }

  /** The members of an aggregate, in order; empty for anything else. */
  default List<Value> items() {
    return unwrapped() instanceof ListOf list ? list.values() : List.of();
  }

  /** Whether this is an aggregate, empty or not. */
  default boolean isList() {
    return unwrapped() instanceof ListOf;
  }
}
