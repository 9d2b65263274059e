import * as THREE from "three";

const KINDS = {
  HOSE: { radius: 0.07, light: "#0079bc", dark: "#8fcdff" },
  PIPE: { radius: 0.13, light: "#bf3b00", dark: "#ffb27a" },
  RISER_HOSE: { radius: 0.09, light: "#0079bc", dark: "#8fcdff" },
  RISER_PIPE: { radius: 0.16, light: "#bf3b00", dark: "#ffb27a" },
  WHIP: { radius: 0.04, light: "#406200", dark: "#80b433" },
};
const OVER = 0.15;

const MACHINE = { light: "#944666", dark: "#eb95b5" }, REACHED = { light: "#406200", dark: "#80b433" }, MISSED = { light: "#d0002b", dark: "#ffd43c" };

/** What the colours of the line mean: those that occur. */
export function lineLegend(choice, theme) {
  const lies = (...kinds) => choice.legs.some((l) => kinds.includes(l.kind));
  return [
    [choice.machines.length > 0, MACHINE, "machine"], [lies("HOSE", "RISER_HOSE"), KINDS.HOSE, "hose"], [lies("PIPE", "RISER_PIPE"), KINDS.PIPE, "pipe"],
    [lies("WHIP"), KINDS.WHIP, "whip"], [choice.cells.some((c) => !c.no), REACHED, "place of work"], [choice.cells.some((c) => c.no), MISSED, "not reached"],
  ].filter(([occurs]) => occurs).map(([, look, text]) => ({ colour: look[theme], hatch: 0, letter: "", text }));
}

/** Machine, hose, pipe and places of work as bodies for the scene, on the floors that are shown. */
export function lineBodies(line, choice, theme, isShown) {
  const legs = choice.legs.filter((l) => isShown(l.floor) || (l.rises && isShown(l.to)));
  const bodies = Object.entries(KINDS).flatMap(([kind, look]) => rods(segments(line, legs, kind), look.radius, look[theme]));
  const over = (n) => line.floors[n].elevation + OVER;
  for (const m of choice.machines.filter((m) => isShown(m.floor))) {
    const box = new THREE.Mesh(new THREE.BoxGeometry(2.4, 1.6, 1.6), new THREE.MeshBasicMaterial({ color: MACHINE[theme] }));
    box.position.set(m.at[0], m.at[1], over(m.floor) + 0.8);
    bodies.push(box);
  }
  const discs = (cells, colour) => {
    if (cells.length === 0) return;
    const disc = new THREE.CylinderGeometry(0.45, 0.45, 0.08, 12).rotateX(Math.PI / 2);
    const all = new THREE.InstancedMesh(disc, new THREE.MeshBasicMaterial({ color: colour }), cells.length);
    cells.forEach((c, i) => all.setMatrixAt(i, new THREE.Matrix4().makeTranslation(c.at[0], c.at[1], over(c.floor))));
    bodies.push(all);
  };
  const cells = choice.cells.filter((c) => isShown(c.floor));
  discs(cells.filter((c) => !c.no), REACHED[theme]);
  discs(cells.filter((c) => c.no), MISSED[theme]);
  bodies.forEach((b) => { b.frustumCulled = false; });
  return bodies;
}

/** Straight pieces of all legs of a kind: pairs of points. */
function segments(line, legs, kind) {
  const at = (p, n) => new THREE.Vector3(p[0], p[1], line.floors[n].elevation + OVER);
  return legs.filter((l) => l.kind === kind).flatMap((l) => {
    const points = l.path.map((p) => at(p, l.floor));
    if (l.rises) points.push(at(l.path[l.path.length - 1], l.to));
    return points.slice(1).map((p, i) => [points[i], p]).filter(([a, b]) => a.distanceTo(b) > 1e-6);
  });
}

function rods(pairs, radius, colour) {
  if (pairs.length === 0) return [];
  const rod = new THREE.CylinderGeometry(radius, radius, 1, 6);
  const all = new THREE.InstancedMesh(rod, new THREE.MeshBasicMaterial({ color: colour }), pairs.length);
  const up = new THREE.Vector3(0, 1, 0);
  pairs.forEach(([a, b], i) => {
    const along = b.clone().sub(a), length = along.length();
    all.setMatrixAt(i, new THREE.Matrix4().compose(a.clone().add(b).multiplyScalar(0.5),
        new THREE.Quaternion().setFromUnitVectors(up, along.divideScalar(length)), new THREE.Vector3(1, length, 1)));
  });
  return [all];
}
