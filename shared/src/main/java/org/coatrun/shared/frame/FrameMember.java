package org.coatrun.shared.frame;

import org.coatrun.shared.model.ElementId;

/**
 * What the frame makes of one member.
 *
 * @param part what it does there: column, beam, brace, truss element ...
 * @param reason why it is in its class, in one clause that names the member it hangs from
 */
public record FrameMember(ElementId id, FramePart part, FrameClass frameClass, String reason) {}
