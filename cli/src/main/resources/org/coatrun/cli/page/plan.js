import { svg } from "./dom.js";

const MARGIN = 2;

const NONE = { cells: new Set(), legs: new Set() };

/** The plan of one floor: what stands there, and hose, pipe, machine and places of work on it; a line of its own is bold. */
export function planOf(line, choice, n, own = NONE) {
  const floor = line.floors[n];
  const box = boundsOf(floor, choice.machines.filter((m) => m.floor === n));
  const up = ([x, y]) => `${round(x)},${round(-y)}`;
  const ring = (points) => `M${points.map(up).join("L")}Z`;
  const region = (r) => [r.outline, ...r.holes].map(ring).join("");
  const area = (list, cls) => list.map((r) => svg("path", { class: cls, d: region(r), "fill-rule": "evenodd" }));
  const lies = (l) => l.floor === n && !l.rises;
  const legs = (list, cls) => list.filter(lies).map((l) => svg("polyline", { class: `${l.kind}${cls}`, points: l.path.map(up).join(" ") }));
  const size = Math.max(box[2] - box[0], box[3] - box[1]);
  return svg("svg", {
    class: "plan", role: "img", "aria-label": `Plan of ${floor.name}: ${wordsOf(choice, n)}`,
    viewBox: `${round(box[0] - MARGIN)} ${round(-box[3] - MARGIN)} ${round(box[2] - box[0] + 2 * MARGIN)} ${round(box[3] - box[1] + 2 * MARGIN)}`,
    "font-size": round(size / 38),
  },
      ...area(floor.plate, "plate"), ...area(floor.openings.map((o) => o.region), "opening"), ...area(floor.keepOuts.map((k) => k.region), "keep-out"),
      ...area(floor.walls, "wall"), ...area(floor.columns, "column"),
      ...legs(choice.legs, ""), ...legs([...own.legs].map((i) => choice.legs[i]), " own"),
      ...choice.cells.filter((c) => c.floor === n).map((c) => cell(c, size / 130, own.cells.has(c))),
      ...choice.risers.filter((r) => Math.min(r.from, r.to) <= n && n <= Math.max(r.from, r.to)).map((r) => mark(r.at, "riser", size / 70, r.name)),
      ...choice.machines.filter((m) => m.floor === n).map((m) => mark(m.at, "machine", size / 45, m.name)));
}

function cell(c, r, own) {
  const [x, y] = [round(c.at[0]), round(-c.at[1])];
  const title = svg("title", {}, c.no ? `${c.access}; ${c.no}` : c.access);
  const cls = own ? " own" : "";
  if (!c.no) return svg("circle", { class: `cell${cls}`, cx: x, cy: y, r: round(own ? 1.6 * r : r) }, title);
  return svg("path", { class: `missed${cls}`, d: `M${x - r},${y - r}L${x + r},${y + r}M${x - r},${y + r}L${x + r},${y - r}` }, title);
}

function mark([x, y], cls, r, text) {
  return svg("g", {},
      cls === "machine" ? svg("rect", { class: cls, x: round(x - r), y: round(-y - r), width: round(2 * r), height: round(2 * r) })
        : svg("circle", { class: cls, cx: round(x), cy: round(-y), r: round(r) }),
      svg("text", { x: round(x + 1.4 * r), y: round(-y - 0.6 * r) }, text));
}

function wordsOf(choice, n) {
  const cells = choice.cells.filter((c) => c.floor === n), missed = cells.filter((c) => c.no).length;
  return `${cells.length} places of work, ${missed === 0 ? "all reached" : `${missed} not reached`}`;
}

function boundsOf(floor, machines) {
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  const widen = ([x, y]) => { box[0] = Math.min(box[0], x); box[1] = Math.min(box[1], y); box[2] = Math.max(box[2], x); box[3] = Math.max(box[3], y); };
  floor.plate.forEach((r) => r.outline.forEach(widen));
  machines.forEach((m) => widen(m.at));
  return Number.isFinite(box[0]) ? box : [0, 0, 1, 1];
}

const round = (v) => Math.round(v * 100) / 100;
