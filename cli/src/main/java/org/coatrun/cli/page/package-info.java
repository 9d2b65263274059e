/**
 * The page to look at: one HTML file that opens from disk, with the drawing library, the geometry
 * and all numbers inside, and a policy that lets nothing leave it.
 */
package org.coatrun.cli.page;
