/**
 * The takeoff: each member and deck of a building with what was measured of it, why it counts or
 * not, and sums that are sums of these lines and of nothing else. Pure functions on immutable
 * records.
 */
package org.coatrun.shared.estimate;
