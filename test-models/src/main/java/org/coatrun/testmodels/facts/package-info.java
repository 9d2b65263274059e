/** What the generator knows about the buildings it wrote, for tests to compare with. */
package org.coatrun.testmodels.facts;
