/**
 * What of a body's surface is exposed once its neighbours cover their part: contact face to face,
 * encased bodies, hollow interiors, ends, small holes.
 */
package org.coatrun.geometry.exposure;
