/**
 * Solids as plane faces on shared vertices, and what can be asked of them by slicing with a plane:
 * cuts, covers, sections. Metres throughout. Only original solids are sliced, never results.
 */
package org.coatrun.geometry.solid;
