/** The material line: from building, takeoff and job to a request, and its plan into files. */
package org.coatrun.cli.line;
