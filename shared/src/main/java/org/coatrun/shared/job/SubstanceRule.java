package org.coatrun.shared.job;

import java.util.Optional;
import org.coatrun.shared.yaml.Key;

/**
 * Says of members whether they are steel where the model does not, or says it wrongly. All
 * selectors that are given must match; of several rules that match the last one wins.
 */
public record SubstanceRule(
    @Key(note = "name or mark; * stands for anything") Optional<String> name,
    @Key(note = "name of the type; * stands for anything") Optional<String> typeName,
    @Key(note = "designation, such as W12X26; * stands for anything") Optional<String> section,
    @Key(note = "name of a material; * stands for anything") Optional<String> material,
    @Key(note = "class in the model, such as IfcMember; * stands for anything")
        Optional<String> modelClass,
    @Key(note = "GlobalId of one element") Optional<String> guid,
    @Key(note = "yes: it is steel; no: it is not, and is left out") boolean steel,
    @Key(note = "why, for the reports") Optional<String> reason) {

  /**
   * @throws IllegalArgumentException where the rule would match everything
   */
  public SubstanceRule {
    if (name.isEmpty()
        && typeName.isEmpty()
        && section.isEmpty()
        && material.isEmpty()
        && modelClass.isEmpty()
        && guid.isEmpty()) {
      throw new IllegalArgumentException(
          "the rule selects nothing; give name, type-name, section, material, model-class or guid");
    }
  }
}
