package org.coatrun.testmodels.facts;

/** What an element is made of. */
public enum Matter {
  STEEL,
  STEEL_DECK,
  CONCRETE,
  TIMBER,
  GLASS,
  ALUMINIUM,
  REINFORCEMENT,
  GYPSUM,
  OTHER
}
