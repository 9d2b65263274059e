/** From an IFC file to a Building. */
package org.coatrun.ifcimport;
