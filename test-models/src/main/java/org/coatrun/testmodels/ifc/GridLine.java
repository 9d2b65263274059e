package org.coatrun.testmodels.ifc;

import org.coatrun.testmodels.shape.Vec2;

/** A named axis of the grid in plan. */
public record GridLine(String name, Vec2 from, Vec2 to) {}
