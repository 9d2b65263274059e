/** How the program ends and what it says when something goes wrong. */
package org.coatrun.cli.console;
