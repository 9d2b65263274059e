/**
 * Writes workbooks in SpreadsheetML (ECMA-376, Office Open XML): values, formulas with the values
 * that they have, a few fixed styles. Sheets stream; bytes depend on their content alone.
 */
package org.coatrun.cli.spreadsheet;
