/**
 * The workbook of a takeoff: its tables, sums, rates and money, with formulas that use the rates.
 */
package org.coatrun.cli.workbook;
