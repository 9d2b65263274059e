import * as THREE from "three";

/** Each part of the line has a colour, and a shape that tells it without colour. */
const LOOKS = {
  machine: { light: "#944666", dark: "#eb95b5", shape: "box" },
  hose: { light: "#0079bc", dark: "#8fcdff", shape: "thin" },
  pipe: { light: "#bf3b00", dark: "#ffb27a", shape: "thick" },
  whip: { light: "#600f9d", dark: "#c9a2ff", shape: "upright" },
  place: { light: "#406200", dark: "#80b433", shape: "disc" },
  missed: { light: "#1d2228", dark: "#ffd43c", shape: "cross" },
  own: { light: "#e8004f", dark: "#ff5a8a", shape: "ringed" },
};
const KINDS = {
  HOSE: { radius: 0.07, look: LOOKS.hose },
  PIPE: { radius: 0.14, look: LOOKS.pipe },
  RISER_HOSE: { radius: 0.09, look: LOOKS.hose },
  RISER_PIPE: { radius: 0.18, look: LOOKS.pipe },
};
const WHIP = 0.04, OWN = 0.1, OVER = 0.15;

/** What the colours and shapes of the line mean: those that occur. */
export function lineLegend(choice, own, theme) {
  const lies = (...kinds) => choice.legs.some((l) => kinds.includes(l.kind));
  const reached = choice.cells.some((c) => !c.no);
  return [
    [choice.machines.length > 0, LOOKS.machine, "machine"], [lies("HOSE", "RISER_HOSE"), LOOKS.hose, "hose"], [lies("PIPE", "RISER_PIPE"), LOOKS.pipe, "pipe"],
    [reached, LOOKS.whip, "whip, up to the steel"], [reached, LOOKS.place, "place of work"], [choice.cells.some((c) => c.no), LOOKS.missed, "not reached"],
    [own.cells.size > 0, LOOKS.own, "line to what is chosen"],
  ].filter(([occurs]) => occurs).map(([, look, text]) => ({ colour: look[theme], shape: look.shape, text }));
}

/** Machine, hose, pipe and places of work as bodies for the scene, on the floors that are shown. */
export function lineBodies(line, choice, own, theme, isShown) {
  const floor = (n) => line.floors[n].elevation + OVER;
  const shown = (l) => isShown(l.floor) || (l.rises && isShown(l.to));
  const legs = choice.legs.filter(shown), owned = [...own.legs].map((n) => choice.legs[n]).filter(shown);
  const cells = choice.cells.filter((c) => isShown(c.floor)), reached = cells.filter((c) => !c.no);
  const bodies = [
    ...Object.entries(KINDS).flatMap(([kind, { radius, look }]) => [
      ...rods(segments(legs, kind, floor), radius, look[theme]),
      ...rods(segments(owned, kind, floor), radius + OWN, LOOKS.own[theme]),
    ]),
    ...rods(reached.map((c) => [point(c.at, floor(c.floor)), point(c.at, floor(c.floor) + Math.max(0, c.highest - OVER))]), WHIP, LOOKS.whip[theme]),
    ...discs(reached, 0.45, LOOKS.place[theme], floor), ...discs(cells.filter((c) => own.cells.has(c)), 0.8, LOOKS.own[theme], floor, 0.04),
    ...crosses(cells.filter((c) => c.no), LOOKS.missed[theme], floor),
    ...choice.machines.filter((m) => isShown(m.floor)).map((m) => machine(m, LOOKS.machine[theme], floor)),
  ];
  bodies.forEach((b) => { b.frustumCulled = false; });
  return bodies;
}

const point = (p, z) => new THREE.Vector3(p[0], p[1], z);
const flat = (colour) => new THREE.MeshBasicMaterial({ color: colour });

function machine(m, colour, floor) {
  const box = new THREE.Mesh(new THREE.BoxGeometry(2.4, 1.6, 1.6), flat(colour));
  box.position.copy(point(m.at, floor(m.floor) + 0.8));
  return box;
}

function discs(cells, radius, colour, floor, thick = 0.08) {
  return repeated(new THREE.CylinderGeometry(radius, radius, thick, 16).rotateX(Math.PI / 2), cells, colour, floor);
}

function crosses(cells, colour, floor) {
  return [1, -1].flatMap((way) => repeated(new THREE.BoxGeometry(1.8, 0.25, 0.12).rotateZ((way * Math.PI) / 4), cells, colour, floor));
}

function repeated(body, cells, colour, floor) {
  if (cells.length === 0) return [];
  const all = new THREE.InstancedMesh(body, flat(colour), cells.length);
  cells.forEach((c, i) => all.setMatrixAt(i, new THREE.Matrix4().makeTranslation(c.at[0], c.at[1], floor(c.floor))));
  return [all];
}

/** Straight pieces of all legs of a kind: pairs of points. */
function segments(legs, kind, floor) {
  return legs.filter((l) => l.kind === kind).flatMap((l) => {
    const points = l.path.map((p) => point(p, floor(l.floor)));
    if (l.rises) points.push(point(l.path[l.path.length - 1], floor(l.to)));
    return points.slice(1).map((p, i) => [points[i], p]);
  });
}

function rods(pairs, radius, colour) {
  const long = pairs.filter(([a, b]) => a.distanceTo(b) > 1e-6);
  if (long.length === 0) return [];
  const rod = new THREE.CylinderGeometry(radius, radius, 1, 6);
  const all = new THREE.InstancedMesh(rod, flat(colour), long.length);
  const up = new THREE.Vector3(0, 1, 0);
  long.forEach(([a, b], i) => {
    const along = b.clone().sub(a), length = along.length();
    all.setMatrixAt(i, new THREE.Matrix4().compose(a.clone().add(b).multiplyScalar(0.5),
        new THREE.Quaternion().setFromUnitVectors(up, along.divideScalar(length)), new THREE.Vector3(1, length, 1)));
  });
  return [all];
}
