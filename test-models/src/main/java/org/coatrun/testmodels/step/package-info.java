/**
 * Writes ISO 10303-21 files: records, references and numbers, nothing that is particular to IFC.
 */
package org.coatrun.testmodels.step;
