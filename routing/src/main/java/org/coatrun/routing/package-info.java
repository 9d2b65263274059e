/** Floors, risers, hose: how the material gets there. */
package org.coatrun.routing;
