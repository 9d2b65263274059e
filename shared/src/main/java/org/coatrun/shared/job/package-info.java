/**
 * The job file: what the program decides by, as records whose components are the file's keys. Each
 * has a stated default; a default marked common practice has no source and is there to be changed.
 */
package org.coatrun.shared.job;
