package org.coatrun.ifcimport.recognise;

import java.util.Set;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.shape.Profile;

/** Elements of a kind that is structural steel only now and then. */
final class Candidates {

  /** Their parts are layers and studs, which are not fireproofed as members. */
  private static final Set<String> NOT_FRAMES =
      Set.of(
          "IfcWall",
          "IfcWallStandardCase",
          "IfcWallElementedCase",
          "IfcCovering",
          "IfcCurtainWall");

  private Candidates() {}

  /**
   * Whether such an element is structural steel: its material says steel, a section is named, or
   * its profile is one of steel and not a pipe's.
   */
  static boolean isStructural(Description d, Classification c) {
    if (!c.isSteel() || NOT_FRAMES.contains(d.wholeEntity())) {
      return false;
    }
    boolean byMaterial =
        c.evidence().stream().anyMatch(e -> e.source() == Evidence.Source.MATERIAL);
    boolean named =
        SectionNames.designation(d.profile().map(Profile::name).orElse("")).isPresent()
            || SectionNames.designation(d.materialProfile()).isPresent()
            || SectionNames.designation(d.names()).isPresent();
    String shape = d.profile().map(ProfileKinds::steelShape).orElse("");
    return byMaterial || named || (!shape.isEmpty() && !ProfileKinds.isHollow(shape));
  }
}
