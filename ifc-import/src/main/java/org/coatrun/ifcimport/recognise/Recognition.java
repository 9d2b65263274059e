package org.coatrun.ifcimport.recognise;

import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;

/**
 * What an element is taken for by its description.
 *
 * @param section by the description alone, {@link SectionName#NONE} where no name in it is known
 * @param isContradictory whether it is of steel and of something else that bears loads
 * @param isStructural whether it is structural steel, where its kind is that only now and then
 * @param isSheet whether it is a sheet of deck
 */
public record Recognition(
    Role role,
    Classification substance,
    SectionName section,
    boolean isContradictory,
    boolean isStructural,
    boolean isSheet) {

  static Recognition of(Description d) {
    Classification substance = Substances.of(d);
    Role role = Roles.of(d);
    return new Recognition(
        role,
        substance,
        SectionNames.known(d, role),
        Substances.isContradictory(d),
        Candidates.isStructural(d, substance),
        Decks.isSheet(d));
  }
}
