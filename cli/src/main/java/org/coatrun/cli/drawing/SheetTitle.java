package org.coatrun.cli.drawing;

/**
 * What the title block says.
 *
 * @param subject what is drawn: {@code Line plan, Level 3}
 * @param number of the sheet, from 1
 */
record SheetTitle(String building, String subject, int number, int of) {}
