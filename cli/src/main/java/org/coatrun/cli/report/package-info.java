/** What the program shows and writes: tables, CSV and JSON, made from finished records. */
package org.coatrun.cli.report;
