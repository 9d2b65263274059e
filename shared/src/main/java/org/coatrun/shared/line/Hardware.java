package org.coatrun.shared.line;

import java.util.Objects;
import org.coatrun.shared.units.Length;

/**
 * So many pieces of one kind and size.
 *
 * @param size length of a piece; zero where pieces have none
 */
public record Hardware(Item item, Length size, int count) implements Comparable<Hardware> {

  /** What is loaded on the truck. */
  public enum Item {
    TRANSFER_HOSE("transfer hose"),
    HOSE_COUPLING("hose coupling"),
    WHIP_HOSE("whip hose"),
    REDUCER("reducer to whip"),
    STANDPIPE("standpipe length"),
    PIPE_COUPLING("pipe coupling"),
    PIPE_BEND("pipe bend"),
    PIPE_CLAMP("pipe clamp or brace"),
    CLEAN_OUT("clean-out"),
    POLE_GUN_SECTION("pole gun section"),
    POLE_GUN_TIP("pole gun tip hose");

    private final String words;

    Item(String words) {
      this.words = words;
    }

    /** The same in words. */
    public String words() {
      return words;
    }
  }

  public Hardware {
    Objects.requireNonNull(item);
    Objects.requireNonNull(size);
    if (count < 0) {
      throw new IllegalArgumentException("fewer than no pieces of " + item);
    }
  }

  @Override
  public int compareTo(Hardware o) {
    return item != o.item ? item.compareTo(o.item) : o.size.compareTo(size);
  }
}
