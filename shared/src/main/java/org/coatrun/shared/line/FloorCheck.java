package org.coatrun.shared.line;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;

/**
 * The engineer's sheet for one floor.
 *
 * @param rise from the machine's floor up; negative where the work lies below
 * @param storeys from the machine's floor, up or down
 * @param flexible longest flexible hose in all
 * @param pipe longest pipe in all
 * @param bends most bends on one line
 * @param standpipe why standpipe is required, each in one sentence; empty where it is not
 * @param equivalent of the line that is longest by the quick rule
 * @param waterAtPump pressure needed at the pump
 * @param booster whether the site's supply falls short; empty where the supply is not known
 * @param feederDrop in per cent of the voltage; empty where feeder or power is not known
 * @param fans air that must be moved until cured, one line for each enclosed space, or one for the
 *     floor
 * @param notes what else should be known, each in one sentence
 */
public record FloorCheck(
    Length rise,
    int storeys,
    Length flexible,
    Length pipe,
    int bends,
    List<String> standpipe,
    EquivalentLength equivalent,
    Pressure waterAtPump,
    Optional<Boolean> booster,
    OptionalDouble feederDrop,
    List<Fan> fans,
    List<String> notes) {

  public FloorCheck {
    standpipe = List.copyOf(standpipe);
    fans = List.copyOf(fans);
    notes = List.copyOf(notes);
  }

  /** Air to be moved through a space. */
  public record Fan(String space, FlowRate air) {}
}
