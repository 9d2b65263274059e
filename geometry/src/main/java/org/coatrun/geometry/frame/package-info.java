/**
 * The frame by geometry and a graph: boxes about the members tell what meets what, and what meets a
 * column is primary.
 */
package org.coatrun.geometry.frame;
