/**
 * What a body looks like, free of any file format: points, curves, profiles and solids in metres
 * and radians. These are descriptions; areas and volumes are the geometry module's business.
 */
package org.coatrun.shared.shape;
