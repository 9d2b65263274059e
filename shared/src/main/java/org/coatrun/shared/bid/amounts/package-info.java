/**
 * Amounts of a bid, gathered: material, labour, money, programme, inspection, alternates, basis.
 */
package org.coatrun.shared.bid.amounts;
