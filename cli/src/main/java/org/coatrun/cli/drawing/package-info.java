/**
 * Drawings of a line plan: a plan of each floor and a section through the risers, as SVG and as one
 * PDF. Weight, dashes, hatches and symbols of our own carry the meaning, never colour. Everything
 * is drawn from the neutral records of the line; no model shows through.
 */
package org.coatrun.cli.drawing;
