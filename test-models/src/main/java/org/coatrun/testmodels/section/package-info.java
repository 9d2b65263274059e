/** Sections of members with their exact areas and perimeters, in metres. */
package org.coatrun.testmodels.section;
