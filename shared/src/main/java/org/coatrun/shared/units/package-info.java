/** Quantities made and read by the name of their unit; inside, everything is SI. */
package org.coatrun.shared.units;
