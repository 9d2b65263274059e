/** Measured bodies as triangles, for pictures; nothing is measured here. */
package org.coatrun.geometry.view;
