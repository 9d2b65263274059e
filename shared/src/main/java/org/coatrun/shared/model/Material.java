package org.coatrun.shared.model;

import java.util.OptionalDouble;

/**
 * One material of an element: the only one, a layer, a constituent, or that of a profile.
 *
 * @param name as the model gives it
 * @param category as the model gives it, or empty
 * @param thickness of a layer, in metres
 */
public record Material(String name, String category, OptionalDouble thickness) {}
