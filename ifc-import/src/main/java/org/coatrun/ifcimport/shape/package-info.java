/** From records to {@link org.coatrun.shared.shape.Shape}: one class for each family. */
package org.coatrun.ifcimport.shape;
