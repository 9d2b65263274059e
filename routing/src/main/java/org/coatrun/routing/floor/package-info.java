/**
 * Where a person and a hose can go on a storey, where lines can rise, and what is sprayed from
 * where. The only package of the module that computes with JTS.
 */
package org.coatrun.routing.floor;
