/** Reading what a user hands in beside models: job files and field sheets. */
package org.coatrun.cli.input;
