package org.coatrun.cli.output;

import java.util.function.Function;

/**
 * What stands in a column, in the form of one kind of file. A column mostly says what it said a row
 * before, and its form is kept until it says something else.
 *
 * @param <C> what is said
 * @param <F> the form of it
 */
public final class Repeated<C, F> {

  private final Function<C, F> form;
  private C said;
  private F formed;

  /** A column that has said nothing so far. */
  public Repeated(Function<C, F> form) {
    this.form = form;
  }

  /** The form of what the next row says. */
  public F of(C next) {
    if (!next.equals(said)) {
      said = next;
      formed = form.apply(next);
    }
    return formed;
  }
}
