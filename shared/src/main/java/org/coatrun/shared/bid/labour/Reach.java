package org.coatrun.shared.bid.labour;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.job.Access;
import org.coatrun.shared.job.HeightBand;
import org.coatrun.shared.units.Length;

/**
 * How an element is reached.
 *
 * @param band number of the height band, from 0
 * @param standing whether its height is known and within the bands
 */
public record Reach(int band, Access access, double factor, Standing standing) {

  /** What is known of a height. */
  public enum Standing {
    /** Within a band. */
    WITHIN,
    /** Above the last band, which is used. */
    ABOVE,
    /** Not known; the first band is used. */
    UNKNOWN
  }

  /** A height this little above the end of a band is in it. */
  private static final double SLACK_METRES = 1e-6;

  /**
   * The band of a height above the working floor: the first that reaches up to it.
   *
   * @param bands from the lowest up, at least one
   */
  public static Reach of(Optional<Length> top, List<HeightBand> bands) {
    if (top.isEmpty()) {
      return reach(0, bands, Standing.UNKNOWN);
    }
    double height = top.get().metres() - SLACK_METRES;
    for (int i = 0; i < bands.size(); i++) {
      if (height <= bands.get(i).upTo().metres()) {
        return reach(i, bands, Standing.WITHIN);
      }
    }
    return reach(bands.size() - 1, bands, Standing.ABOVE);
  }

  private static Reach reach(int i, List<HeightBand> bands, Standing standing) {
    return new Reach(i, bands.get(i).access(), bands.get(i).factor(), standing);
  }

  /** Whether it takes a lift or a scaffold. */
  public boolean lifted() {
    return access == Access.LIFT || access == Access.SCAFFOLD;
  }
}
