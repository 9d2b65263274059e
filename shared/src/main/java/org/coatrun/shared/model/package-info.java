/**
 * The building as the trade sees it: storeys, steel, decks, and what stands around them. Immutable,
 * free of any file format; lengths in metres in world axes (z up) about {@link
 * org.coatrun.shared.model.Building#origin()}.
 */
package org.coatrun.shared.model;
