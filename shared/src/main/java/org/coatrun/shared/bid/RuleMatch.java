package org.coatrun.shared.bid;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.job.RatingRule;
import org.coatrun.shared.shape.Vec2;

/** Whether a rating rule matches an element: all selectors that the rule gives must hold. */
public final class RuleMatch {

  private RuleMatch() {}

  /** Whether the rule matches; letter case does not count in names, nor blanks in sections. */
  public static boolean matches(RatingRule rule, Coated item) {
    return named(rule.storey(), item.place().storey())
        && named(rule.workingFloor(), item.place().workingFloor())
        && named(rule.space(), item.place().space())
        && named(rule.name(), item.name())
        && section(rule.section(), item.section())
        && rule.guid().map(g -> g.equals(item.guid())).orElse(true)
        && inZone(rule.zone(), item.place().middle())
        && ofFrame(rule, item);
  }

  private static boolean ofFrame(RatingRule rule, Coated item) {
    if (item instanceof CoatedMember m) {
      return rule.role().map(r -> r == m.role()).orElse(true)
          && rule.frameClass().map(c -> c == m.frameClass()).orElse(true);
    }
    return rule.role().isEmpty() && rule.frameClass().isEmpty();
  }

  private static String tight(String section) {
    return section.replace(" ", "");
  }

  /** Whether a designation fits; letter case and blanks do not count. */
  static boolean section(Optional<String> pattern, String section) {
    return named(pattern.map(RuleMatch::tight), tight(section));
  }

  static boolean named(Optional<String> pattern, String name) {
    return pattern.map(p -> glob(fold(p), fold(name))).orElse(true);
  }

  /** Whether a pattern of the job file fits a name: * stands for anything, letter case for none. */
  public static boolean like(String pattern, String name) {
    return glob(fold(pattern), fold(name));
  }

  private static String fold(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  /** Matches * as anything, in time that grows with the product of the lengths at worst. */
  static boolean glob(String pattern, String text) {
    int p = 0;
    int t = 0;
    int star = -1;
    int mark = 0;
    while (t < text.length()) {
      if (p < pattern.length() && pattern.charAt(p) == '*') {
        star = p++;
        mark = t;
      } else if (p < pattern.length() && pattern.charAt(p) == text.charAt(t)) {
        p++;
        t++;
      } else if (star >= 0) {
        p = star + 1;
        t = ++mark;
      } else {
        return false;
      }
    }
    while (p < pattern.length() && pattern.charAt(p) == '*') {
      p++;
    }
    return p == pattern.length();
  }

  private static boolean inZone(List<Vec2> zone, Optional<Vec2> middle) {
    return zone.isEmpty() || middle.map(m -> contains(zone, m)).orElse(false);
  }

  /** Even-odd rule; points on the edge may fall on either side. */
  private static boolean contains(List<Vec2> zone, Vec2 at) {
    boolean inside = false;
    for (int i = 0, j = zone.size() - 1; i < zone.size(); j = i++) {
      Vec2 a = zone.get(i);
      Vec2 b = zone.get(j);
      boolean straddles = a.y() > at.y() != b.y() > at.y();
      if (straddles && at.x() < (b.x() - a.x()) * (at.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        inside = !inside;
      }
    }
    return inside;
  }
}
