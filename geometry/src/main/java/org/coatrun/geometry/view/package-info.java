/** Measured bodies as facets, for pictures; nothing is measured here. */
package org.coatrun.geometry.view;
