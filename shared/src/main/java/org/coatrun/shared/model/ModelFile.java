package org.coatrun.shared.model;

/**
 * A file that the building was read from.
 *
 * @param name file name without folders
 * @param schema as the file names it
 * @param schemaUsed the table it was read by
 * @param lengthUnit unit of length of its numbers, in words
 * @param records instances in its data sections
 * @param application the program that wrote it, as its header says, or empty
 */
public record ModelFile(
    String name,
    String schema,
    String schemaUsed,
    String lengthUnit,
    long records,
    String application) {}
