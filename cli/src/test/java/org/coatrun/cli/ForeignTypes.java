package org.coatrun.cli;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.stream.Stream;

/** Fails where a method that another module calls takes or gives a type of some library. */
final class ForeignTypes extends ArchCondition<JavaClass> {

  private final List<String> prefixes;

  ForeignTypes(String... prefixes) {
    super("keep library types out of what other modules call");
    this.prefixes = List.of(prefixes);
  }

  @Override
  public void check(JavaClass item, ConditionEvents events) {
    item.getCodeUnits().stream()
        .filter(unit -> isCalledFromAnotherModule(item, unit))
        .filter(this::isForeign)
        .forEach(unit -> events.add(SimpleConditionEvent.violated(unit, unit.getFullName())));
  }

  private static boolean isCalledFromAnotherModule(JavaClass item, JavaCodeUnit unit) {
    return item.getAccessesToSelf().stream()
        .filter(access -> access.getTarget().resolveMember().filter(unit::equals).isPresent())
        .anyMatch(access -> !module(access.getOriginOwner()).equals(module(item)));
  }

  private boolean isForeign(JavaCodeUnit unit) {
    return Stream.concat(unit.getRawParameterTypes().stream(), Stream.of(unit.getRawReturnType()))
        .anyMatch(type -> prefixes.stream().anyMatch(type.getName()::startsWith));
  }

  private static String module(JavaClass type) {
    String[] parts = type.getPackageName().split("\\.", -1);
    return parts.length > 2 ? parts[2] : "";
  }
}
