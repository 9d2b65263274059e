package org.coatrun.shared.model;

/** A room. */
public record Space(Identity identity, String longName, Properties properties, Body body)
    implements Element {}
