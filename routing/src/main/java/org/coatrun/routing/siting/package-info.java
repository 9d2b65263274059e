/**
 * Where the machine stands and which risers and outlets are used: an exact choice at least cost, by
 * branch and bound on a Lagrangian bound that is always handed back. In bare numbers; what they
 * stand for is the business of the line package.
 */
package org.coatrun.routing.siting;
