/**
 * Reads ISO 10303-21 files ("STEP physical files"): opens, indexes in one pass, decodes a record
 * only when asked. Knows nothing of IFC beyond the file format.
 */
package org.coatrun.ifcimport.part21;
