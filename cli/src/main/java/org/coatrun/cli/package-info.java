/** The command line: only here does anything print or write. */
package org.coatrun.cli;
