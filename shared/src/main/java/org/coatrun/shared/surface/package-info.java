/** What the geometry module measured of each element: the ledger of its faces, and its section. */
package org.coatrun.shared.surface;
