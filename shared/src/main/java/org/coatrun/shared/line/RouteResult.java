package org.coatrun.shared.line;

/** A route, or why there is none. */
public sealed interface RouteResult permits Route, NoRoute {}
