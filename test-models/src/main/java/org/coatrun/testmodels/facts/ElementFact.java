package org.coatrun.testmodels.facts;

import java.util.OptionalDouble;

/**
 * What is known of one element, by construction.
 *
 * @param entity the entity's name in the file
 * @param tag the mark, empty where there is none
 * @param section designation of the section, empty where there is none
 * @param shape the kind of body: the word of its representation, {@code none} without a body
 * @param lengthM length of a member in metres, 0 where it has no meaning
 * @param bodyAreaM2 all faces of the body, inner ones included, where a closed formula exists
 * @param volumeM3 volume of the body, where a closed formula exists
 */
public record ElementFact(
    String guid,
    String entity,
    String name,
    String tag,
    String storey,
    String section,
    Matter matter,
    String shape,
    double lengthM,
    OptionalDouble bodyAreaM2,
    OptionalDouble volumeM3) {}
