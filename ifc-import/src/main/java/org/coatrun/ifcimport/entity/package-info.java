/** Records by the names of their attributes, whatever the schema; units of a file. */
package org.coatrun.ifcimport.entity;
