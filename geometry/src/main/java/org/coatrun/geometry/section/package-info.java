/** What a cut across a member measures: steel, contour, heated perimeter, box. */
package org.coatrun.geometry.section;
