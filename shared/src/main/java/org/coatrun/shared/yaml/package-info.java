/**
 * Reads the project's YAML files (job, listing) into records, and tells what is wrong with them:
 * one sentence with file, line and key. Input is hostile: size, depth and count are bounded,
 * anchors, aliases and tags are refused, and a file holds one document.
 *
 * <p>A file's keys are the components of a record, with hyphens; {@link
 * org.coatrun.shared.yaml.Key} adds default, bounds and a note. Reader, JSON Schema and starter
 * files all follow from that.
 */
package org.coatrun.shared.yaml;
