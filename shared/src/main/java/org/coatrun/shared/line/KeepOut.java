package org.coatrun.shared.line;

import java.util.Objects;

/** An area of one storey that the job file keeps free of hose and pipe, with its reason. */
public record KeepOut(String storey, String reason, Region region) {
  public KeepOut {
    Objects.requireNonNull(storey);
    Objects.requireNonNull(reason);
    Objects.requireNonNull(region);
  }
}
