package org.coatrun.shared.frame;

import org.coatrun.shared.model.ElementId;

/**
 * One piece of steel that the model holds twice.
 *
 * @param kept the one that counts
 * @param doubled the one that does not
 */
public record Doubled(ElementId kept, ElementId doubled) {}
