package org.coatrun.shared.job;

import java.util.List;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.yaml.Key;

/** Crew, rates and height bands. */
public record Labour(
    @Key(
            note = "people on one machine and nozzle [common practice]",
            fallback = "4",
            least = "1",
            most = "50")
        int crew,
    @Key(
            note = "working hours of a day [common practice]",
            fallback = "8 h",
            least = "1 h",
            most = "24 h",
            unit = "h")
        double shift,
    @Key(note = "board feet in place an hour, by kind [common practice]") SprayRates rates,
    @Key(
            note =
                "height bands from the lowest up; steel above the last one is a finding [common practice]",
            fallback =
                "[{up-to: 10 ft, access: floor, factor: 1}, {up-to: 20 ft, access: pole-gun, factor: 1.2}, {up-to: 40 ft, access: lift, factor: 1.5}, {up-to: 100 ft, access: scaffold, factor: 2}]")
        List<HeightBand> bands,
    @Key(
            note = "crew hours to set up, mask, move and clean on each floor [common practice]",
            fallback = "8 h",
            least = "0 h",
            most = "500 h",
            unit = "h")
        double perFloor,
    @Key(
            note =
                "crew hours for patching and clean-up, in per cent of spraying [common practice]",
            fallback = "10 %",
            least = "0 %",
            most = "100 %")
        Share patching) {

  /**
   * @throws IllegalArgumentException where there is no band or the bands do not rise
   */
  public Labour {
    bands = List.copyOf(bands);
    if (bands.isEmpty()) {
      throw new IllegalArgumentException("at least one height band is needed");
    }
    for (int i = 1; i < bands.size(); i++) {
      if (bands.get(i).upTo().compareTo(bands.get(i - 1).upTo()) <= 0) {
        throw new IllegalArgumentException("height bands must rise from one to the next");
      }
    }
  }
}
