/**
 * The rules of the trade as pure functions on typed quantities: ratings, section factors,
 * thickness, material, water, power, air, cold and inspection. Each names its source; a value
 * marked "common practice" has none and is a default that the job file can change.
 */
package org.coatrun.shared.rules;
