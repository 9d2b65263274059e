/**
 * Which attribute stands where, for each schema that is read. Nothing else in the project knows a
 * position.
 */
package org.coatrun.ifcimport.schema;
