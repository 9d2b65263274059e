/**
 * Floors as seen from above: where slabs carry a person, what stands on them at ankle height, and
 * where they are open to the storey below.
 */
package org.coatrun.geometry.floor;
