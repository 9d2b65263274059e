/** Checks that whatever is handed in, a run ends in a result or in one clear sentence. */
package org.coatrun.cli.damage;
