/** Writing results so that a run leaves either all of them or none. */
package org.coatrun.cli.output;
