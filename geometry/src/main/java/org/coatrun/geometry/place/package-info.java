/** Where elements stand: the floor under them, the plate over them, the room they are in. */
package org.coatrun.geometry.place;
