/** Sample buildings in a scenario of our own, and the generator that writes them. */
package org.coatrun.testmodels;
