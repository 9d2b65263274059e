package org.coatrun.ifcimport.part21;

import java.util.List;
import java.util.Objects;

/**
 * What the header section says; empty strings and lists where it says nothing.
 *
 * @param description the free description, among it the model view definition
 * @param name the name that the exporter gave
 * @param timeStamp when it was written, as it stands
 * @param authors who wrote it
 * @param organisations for whom
 * @param preprocessor the program that wrote the bytes
 * @param originatingSystem the program that the model comes from
 * @param authorisation who released it
 * @param schemas the schema names, as they stand
 */
public record Header(
    List<String> description,
    String name,
    String timeStamp,
    List<String> authors,
    List<String> organisations,
    String preprocessor,
    String originatingSystem,
    String authorisation,
    List<String> schemas) {

  /** A header that says nothing. */
  public static final Header EMPTY =
      new Header(List.of(), "", "", List.of(), List.of(), "", "", "", List.of());

  public Header {
    description = List.copyOf(description);
    Objects.requireNonNull(name);
    Objects.requireNonNull(timeStamp);
    authors = List.copyOf(authors);
    organisations = List.copyOf(organisations);
    Objects.requireNonNull(preprocessor);
    Objects.requireNonNull(originatingSystem);
    Objects.requireNonNull(authorisation);
    schemas = List.copyOf(schemas);
  }
}
