/** A first job file for a model: every key with its default, and what the model holds beside it. */
package org.coatrun.cli.starter;
