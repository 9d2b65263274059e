/**
 * The material line within its limits: ways on the ground, up a riser and over a floor, what is
 * laid and loaded for them, and what the engineer checks.
 */
package org.coatrun.routing.line;
