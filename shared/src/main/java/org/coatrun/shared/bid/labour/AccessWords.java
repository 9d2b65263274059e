package org.coatrun.shared.bid.labour;

import org.coatrun.shared.job.Access;

/** How a crew reaches the steel, in plain English. */
public final class AccessWords {

  private AccessWords() {}

  /** The words of an access. */
  public static String of(Access access) {
    return switch (access) {
      case FLOOR -> "from the floor";
      case POLE_GUN -> "from the floor with a pole gun";
      case LIFT -> "from a lift";
      case SCAFFOLD -> "from a scaffold";
    };
  }
}
