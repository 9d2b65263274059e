/**
 * From measured steel and deck to a bid: hours, thickness, material, labour, money, programme and
 * inspection, each number with its reason. Pure functions of the takeoff, the job and its listings.
 */
package org.coatrun.shared.bid;
