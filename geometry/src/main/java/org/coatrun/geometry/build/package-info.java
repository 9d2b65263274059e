/**
 * Makes solids of shapes: every kind of sweep, mesh, primitive and brep that the model can give, in
 * the axes asked for. Curved sides become strips that keep their true area; polygons across a sweep
 * keep the true area of the section.
 */
package org.coatrun.geometry.build;
