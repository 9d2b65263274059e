package org.coatrun.shared.estimate;

import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.finding.FindingCode;

/** What became of an element in the takeoff. */
public sealed interface Outcome {

  Status status();

  /** Why it was left out or is unresolved, in a few words; empty where it counts. */
  String reason();

  /** What was measured; present where the element counts and nowhere else. */
  Optional<Quantities> quantities();

  /** It counts with what was measured. */
  record Counted(Quantities measured) implements Outcome {
    public Counted {
      Objects.requireNonNull(measured);
    }

    @Override
    public Status status() {
      return Status.COUNTED;
    }

    @Override
    public String reason() {
      return "";
    }

    @Override
    public Optional<Quantities> quantities() {
      return Optional.of(measured);
    }
  }

  /** It needs no coating, whatever its size. */
  record LeftOut(String reason) implements Outcome {
    public LeftOut {
      requireReason(reason);
    }

    @Override
    public Status status() {
      return Status.LEFT_OUT;
    }

    @Override
    public Optional<Quantities> quantities() {
      return Optional.empty();
    }
  }

  /** It may need coating, and nothing can be said of how much. */
  record Unresolved(FindingCode code, String reason) implements Outcome {
    public Unresolved {
      Objects.requireNonNull(code);
      requireReason(reason);
    }

    @Override
    public Status status() {
      return Status.UNRESOLVED;
    }

    @Override
    public Optional<Quantities> quantities() {
      return Optional.empty();
    }
  }

  private static void requireReason(String reason) {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("an element cannot be set aside without a reason");
    }
  }
}
