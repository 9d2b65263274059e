package org.coatrun.testmodels.shape;

/** A point or vector in a profile's plane, in metres. */
public record Vec2(double x, double y) {}
