/** Lines planned for whole buildings, held to hand calculation and to the limits of the trade. */
package org.coatrun.cli.line;
