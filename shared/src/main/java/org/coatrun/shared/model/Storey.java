package org.coatrun.shared.model;

import org.coatrun.shared.units.Length;

/** A storey. Storeys of several files that share name and elevation are one. */
public record Storey(ElementId id, String guid, String name, Length elevation) {}
