package org.coatrun.cli.drawing;

import org.coatrun.cli.drawing.paper.Paper;
import org.coatrun.cli.drawing.paper.Recording;

/**
 * A sheet, laid out.
 *
 * @param file its name without an ending
 */
record Sheet(String file, String title, Paper paper, Recording marks) {}
