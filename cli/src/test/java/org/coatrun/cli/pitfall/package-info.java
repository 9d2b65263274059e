/** Faults that readers of steel models are known for, from the text of a model to its numbers. */
package org.coatrun.cli.pitfall;
