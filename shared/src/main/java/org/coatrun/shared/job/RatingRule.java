package org.coatrun.shared.job;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.yaml.Key;

/**
 * A rule that states hours, or whether and how to coat, for the elements it matches. All selectors
 * that are given must match; a rule without selectors matches everything. Later rules win over
 * earlier ones and over Table 601.
 */
public record RatingRule(
    @Key(note = "what to call this rule in reports") Optional<String> label,
    @Key(note = "name of the storey; * stands for anything") Optional<String> storey,
    @Key(note = "name of the floor it is sprayed from; * stands for anything")
        Optional<String> workingFloor,
    @Key(
            note = "corners of an area in plan, in the coordinates of the model",
            least = "-10000 ft",
            most = "10000 ft")
        List<Vec2> zone,
    @Key(note = "name of the room that the middle of the element lies in; * stands for anything")
        Optional<String> space,
    @Key(note = "what the element does") Optional<Role> role,
    @Key(note = "primary frame or secondary (IBC 202)") Optional<FrameClass> frameClass,
    @Key(note = "designation, such as W12X26; * stands for anything") Optional<String> section,
    @Key(note = "name or mark; * stands for anything") Optional<String> name,
    @Key(note = "GlobalId of one element") Optional<String> guid,
    @Key(note = "the rating to use", least = "0 h", most = "4 h") Optional<FireDuration> hours,
    @Key(note = "no: leave it bare whatever its rating") Optional<Boolean> coat,
    @Key(note = "use restrained ratings of the listing") Optional<Boolean> restrained,
    @Key(note = "name of the listing to use") Optional<String> listing,
    @Key(note = "the thickness to use, whatever the listing says", least = "1/8 in", most = "6 in")
        Optional<Length> thickness,
    @Key(note = "why, for the reports") Optional<String> reason) {

  /**
   * @throws IllegalArgumentException where the rule states nothing, or a zone has under three
   *     corners
   */
  public RatingRule {
    zone = List.copyOf(zone);
    if (hours.isEmpty()
        && coat.isEmpty()
        && restrained.isEmpty()
        && listing.isEmpty()
        && thickness.isEmpty()) {
      throw new IllegalArgumentException(
          "the rule states nothing; give hours, coat, restrained, listing or thickness");
    }
    if (!zone.isEmpty() && zone.size() < 3) {
      throw new IllegalArgumentException("a zone needs at least three corners");
    }
  }
}
