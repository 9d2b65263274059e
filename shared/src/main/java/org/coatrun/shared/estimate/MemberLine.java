package org.coatrun.shared.estimate;

import java.util.Optional;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Storey;

/** What the takeoff says of one beam, column, member, plate or other steel element. */
public record MemberLine(Member member, Optional<Storey> storey, Outcome outcome) implements Line {

  @Override
  public Identity identity() {
    return member.identity();
  }
}
