/** Material: from thickness to board feet, bags, pallets, trucks and water. */
package org.coatrun.shared.bid.material;
