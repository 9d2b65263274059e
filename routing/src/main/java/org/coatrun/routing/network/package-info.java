/**
 * Shortest ways over a floor: the exact ways of a hose around corners, and the ways of pipe along
 * walls and column lines. All coordinates are whole tenths of a millimetre, so that "left of", "on"
 * and "right of" are exact answers.
 */
package org.coatrun.routing.network;
