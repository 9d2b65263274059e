package org.coatrun.testmodels.ifc;

import org.coatrun.testmodels.step.Ref;

/**
 * An element that stands in the file.
 *
 * @param ref its record
 * @param guid its GlobalId
 * @param placement its object placement, for what stands in its frame
 */
public record Written(Ref ref, String guid, Ref placement) {}
