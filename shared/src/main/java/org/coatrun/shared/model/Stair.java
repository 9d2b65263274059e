package org.coatrun.shared.model;

/** A stair or ramp, or one flight of it. */
public record Stair(Identity identity, Body body) implements Element {}
