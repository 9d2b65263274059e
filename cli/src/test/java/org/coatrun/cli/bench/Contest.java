package org.coatrun.cli.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Programs on one model, turn about, so that what else the machine does meets all of them. */
record Contest(Map<String, List<String>> commands, int rounds, Duration limit) {

  /** The best time of each program, by its name. */
  Map<String, Timed> run() throws IOException, InterruptedException {
    var best = new LinkedHashMap<String, Timed>();
    for (int round = 0; round < rounds; round++) {
      for (var command : commands.entrySet()) {
        best.merge(command.getKey(), Timed.run(command.getValue(), limit), Timed::better);
      }
    }
    return best;
  }
}
