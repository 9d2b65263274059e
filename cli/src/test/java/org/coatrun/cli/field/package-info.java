/** Checks of the whole way from a real file to its numbers, against values from outside. */
package org.coatrun.cli.field;
