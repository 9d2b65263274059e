/** From shapes to measured surfaces. */
package org.coatrun.geometry;
