/**
 * From IFC files to a {@link org.coatrun.shared.model.Building}; start at {@link
 * org.coatrun.ifcimport.read.IfcImport}.
 */
package org.coatrun.ifcimport.read;
