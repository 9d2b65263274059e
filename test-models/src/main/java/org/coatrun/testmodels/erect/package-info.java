/** Puts members, plates, slabs and walls into a model by their places in the building. */
package org.coatrun.testmodels.erect;
