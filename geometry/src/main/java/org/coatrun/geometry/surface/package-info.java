/**
 * What of each element's surface is exposed, covered, inside or an end: the ledger of its faces.
 */
package org.coatrun.geometry.surface;
