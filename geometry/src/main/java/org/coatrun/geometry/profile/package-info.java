/**
 * Section outlines of straight pieces, arcs and splines: exact area and perimeter of each kind of
 * profile, and the polygons of equal area that solids are built on. Metres and radians.
 */
package org.coatrun.geometry.profile;
