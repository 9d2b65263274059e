package org.coatrun.routing.line;

/**
 * What a cover says of one cell.
 *
 * @param floorClass index of its floor's class
 * @param option index of the option, or −1 where no line reaches the cell
 * @param outlet index of the outlet among the class's, or −1
 */
record Assignment(int floorClass, int option, int outlet) {

  boolean reached() {
    return option >= 0;
  }
}
