package org.coatrun.ifcimport.part21;

/** From an id to a record's number. */
interface Ids {

  /** The number of the first record with an id, or -1. */
  int find(long id);
}
