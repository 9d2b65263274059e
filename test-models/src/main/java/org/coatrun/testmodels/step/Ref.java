package org.coatrun.testmodels.step;

/**
 * Points at a record that has been written.
 *
 * @param id the number after the {@code #}
 */
public record Ref(int id) {}
