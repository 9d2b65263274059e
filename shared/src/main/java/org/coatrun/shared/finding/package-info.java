/** What the program found amiss, under stable codes: one sentence, and what to do. */
package org.coatrun.shared.finding;
