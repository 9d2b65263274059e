package org.coatrun.shared.estimate;

import java.util.Optional;
import org.coatrun.shared.frame.FrameMember;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Storey;

/**
 * What the takeoff says of one beam, column, member, plate or other steel element.
 *
 * @param frame its place in the frame; empty where it was not measured
 */
public record MemberLine(
    Member member, Optional<Storey> storey, Outcome outcome, Optional<FrameMember> frame)
    implements Line {

  @Override
  public Identity identity() {
    return member.identity();
  }
}
