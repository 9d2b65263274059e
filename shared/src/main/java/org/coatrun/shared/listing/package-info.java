/**
 * Tested listings in the project's own open form, YAML with tables in CSV: what thickness a kind of
 * member takes for its hours by its section factor. The program ships no maker's listing; the
 * demonstration listing is invented and marked so.
 */
package org.coatrun.shared.listing;
