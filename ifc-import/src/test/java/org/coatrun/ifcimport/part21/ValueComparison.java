package org.coatrun.ifcimport.part21;

import java.util.List;
import java.util.Locale;
import org.bimserver.emf.IdEObject;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Compares one value of ours with the other reader's object for it. */
final class ValueComparison {

  private ValueComparison() {}

  static boolean agree(Value ours, Object theirs) {
    if (!ours.isGiven() && !(ours instanceof Value.Typed)) {
      return isUnset(theirs);
    }
    if (theirs instanceof IdEObject object) {
      return agreeObject(ours, object);
    }
    if (theirs instanceof List<?> list) {
      return agreeList(ours, list);
    }
    if (theirs instanceof Enumerator item) {
      return agreeItem(ours, item);
    }
    if (theirs instanceof Double number) {
      return ours.asReal().isPresent() && ours.asReal().getAsDouble() == number;
    }
    if (theirs instanceof Long || theirs instanceof Integer) {
      return ours.asInt().isPresent() && ours.asInt().getAsLong() == ((Number) theirs).longValue();
    }
    if (theirs instanceof Boolean truth) {
      return ours.asBoolean().equals(java.util.Optional.of(truth));
    }
    return theirs instanceof String text && ours.asText().equals(java.util.Optional.of(text));
  }

  /** Their numbers have no way to be absent but zero, their truths but undefined. */
  private static boolean isUnset(Object theirs) {
    if (theirs instanceof List<?> list) {
      return list.isEmpty();
    }
    if (theirs instanceof Number number) {
      return number.doubleValue() == 0;
    }
    if (theirs instanceof Enumerator item) {
      return item.getName().equals("NULL") || item.getName().equals("UNDEFINED");
    }
    return theirs == null || theirs.equals(false);
  }

  private static boolean agreeObject(Value ours, IdEObject theirs) {
    if (ours instanceof Value.Ref ref) {
      return ref.id() == theirs.getExpressId();
    }
    EStructuralFeature wrapped = theirs.eClass().getEStructuralFeature("wrappedValue");
    if (wrapped != null) {
      boolean sameType =
          ours instanceof Value.Typed typed
              ? theirs.eClass().getName().toUpperCase(Locale.ROOT).equals(typed.name())
              : true;
      Value inner = ours instanceof Value.Typed typed ? typed.inner() : ours;
      return sameType && agree(inner, theirs.eGet(wrapped));
    }
    EStructuralFeature list = theirs.eClass().getEStructuralFeature("List");
    return list != null && agree(ours, theirs.eGet(list));
  }

  private static boolean agreeList(Value ours, List<?> theirs) {
    List<Value> items = ours.items();
    if (!ours.isList() || items.size() != theirs.size()) {
      return false;
    }
    for (int i = 0; i < items.size(); i++) {
      if (!agree(items.get(i), theirs.get(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean agreeItem(Value ours, Enumerator theirs) {
    String item = ours.asEnum().orElse("");
    return switch (theirs.getName()) {
      case "TRUE" -> item.equals("T") || item.equals("TRUE");
      case "FALSE" -> item.equals("F") || item.equals("FALSE");
      case "UNDEFINED" -> item.equals("U") || item.equals("UNDEFINED");
      default -> item.equals(theirs.getName());
    };
  }
}
