import * as THREE from "three";
import { isThrough } from "./shade.js";

/** Rays about a point lie so many pixels apart. */
const STEP = 4;
const AROUND = 8;

/**
 * The element at a point or, where there is none, the one nearest to it within a reach; -1 where
 * there is none either. What is shown so that one sees through it gives way to all else.
 */
export function pickNear(scene, rayAt, x, y, reach) {
  let through = -1;
  for (let r = 0; r <= reach; r += STEP) {
    for (let i = 0; i < (r === 0 ? 1 : AROUND); i++) {
      const angle = (2 * Math.PI * i) / AROUND;
      const met = firstOn(scene, rayAt(x + r * Math.cos(angle), y + r * Math.sin(angle)));
      if (met.solid >= 0) return met.solid;
      if (through < 0) through = met.through;
    }
  }
  return through;
}

/** What a ray meets first of what is solid and of what is seen through: boxes, then triangles; obeys the cut. */
function firstOn({ parts, paint, position, index, uniforms }, ray) {
  const cut = uniforms.cut.value;
  const [a, b, c, hit] = [0, 1, 2, 3].map(() => new THREE.Vector3());
  const corner = (v, i) => v.fromArray(position, 3 * index[i]);
  const box = new THREE.Box3();
  const met = { solid: -1, through: -1 }, nearest = { solid: Infinity, through: Infinity };
  for (const part of parts) {
    const code = paint[4 * part.element + 3];
    if (code === 0) continue;
    box.min.fromArray(part.box, 0); box.max.fromArray(part.box, 3);
    if (!ray.intersectsBox(box)) continue;
    const kind = isThrough(code) ? "through" : "solid";
    for (let i = part.from; i < part.to; i += 3) {
      if (!ray.intersectTriangle(corner(a, i), corner(b, i + 1), corner(c, i + 2), false, hit)) continue;
      const d = hit.distanceTo(ray.origin);
      if (d < nearest[kind] && cut.x * hit.x + cut.y * hit.y + cut.z * hit.z <= cut.w) { nearest[kind] = d; met[kind] = part.element; }
    }
  }
  return met;
}
