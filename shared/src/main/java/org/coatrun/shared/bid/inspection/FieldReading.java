package org.coatrun.shared.bid.inspection;

import java.util.Optional;
import org.coatrun.shared.units.Length;

/**
 * A row of a field sheet that came back.
 *
 * @param reading empty where nothing was filled in
 * @param line of the file, from 1
 */
public record FieldReading(FieldRow row, Optional<Length> reading, int line) {}
