/** Programme: floors in order with their days, deliveries, checks and the cold. */
package org.coatrun.shared.bid.programme;
