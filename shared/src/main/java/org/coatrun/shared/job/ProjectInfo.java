package org.coatrun.shared.job;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.yaml.Key;

/** By what the job is known; printed at the head of every output. */
public record ProjectInfo(
    @Key(note = "name of the project", fallback = "\"unnamed job\"") String name,
    @Key(note = "job number") Optional<String> number,
    @Key(note = "where the site is") Optional<String> location,
    @Key(note = "who prepared this") Optional<String> preparedBy,
    @Key(note = "anything to print with the job") List<String> notes) {
  public ProjectInfo {
    notes = List.copyOf(notes);
  }
}
