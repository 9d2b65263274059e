/** Writes IFC in each schema; the differences between the schemas stand here and nowhere else. */
package org.coatrun.testmodels.ifc;
