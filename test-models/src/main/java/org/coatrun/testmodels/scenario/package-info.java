/** The sample buildings, each an invented one. */
package org.coatrun.testmodels.scenario;
