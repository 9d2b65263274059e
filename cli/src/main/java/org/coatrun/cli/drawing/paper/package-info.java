/**
 * Paper and ink: what can be drawn on a sheet, in millimetres from its upper left corner, and the
 * writers that put it into SVG and PDF. Nothing here knows what a drawing is about.
 */
package org.coatrun.cli.drawing.paper;
