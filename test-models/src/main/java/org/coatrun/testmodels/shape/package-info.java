/** Points, frames and meshes in metres, before any unit or schema is chosen. */
package org.coatrun.testmodels.shape;
