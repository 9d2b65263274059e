/** The underside of deck: its flutes, and the voids that they leave over the steel below. */
package org.coatrun.geometry.deck;
