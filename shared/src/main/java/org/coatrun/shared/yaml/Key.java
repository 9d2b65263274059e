package org.coatrun.shared.yaml;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a record component means as a key of a file. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Key {

  /** What it is, in a few words, for the starter file and for editors. */
  String note();

  /**
   * Value where the file gives none, as YAML text. Without one, an Optional is empty, a list has no
   * items, a group takes its own defaults, and anything else must be given.
   */
  String fallback() default "";

  /** Least value allowed, as text. */
  String least() default "";

  /** Greatest value allowed, as text. */
  String most() default "";

  /** Unit that a plain number is written with, such as {@code bags/h}. */
  String unit() default "";
}
