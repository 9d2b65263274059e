/**
 * The material line as other parts see it: what a floor looks like, what has to be sprayed there,
 * and the plan of machine, riser, pipe and hose that comes out. Plain points and typed quantities
 * only; no geometry library shows through.
 */
package org.coatrun.shared.line;
