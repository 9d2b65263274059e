/** The commands, one class each: they read options, call the modules, and hand on to reports. */
package org.coatrun.cli.command;
