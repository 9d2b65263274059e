import { h, svg } from "./dom.js";

const SIZE = { width: 26, height: 18 };

/** A swatch with its letter, and its hatch where the view is hatched: it reads without colour too. */
function swatch(row, hatched) {
  return svg("svg", { ...SIZE, "aria-hidden": "true" },
      svg("rect", { ...SIZE, fill: row.colour, stroke: "#777" }),
      hatched && row.hatch > 0 && svg("path", { d: lines(row.hatch), stroke: "#fff", "stroke-opacity": 0.75, "stroke-width": 1.4, fill: "none" }),
      svg("text", { x: 13, y: 13.5, "text-anchor": "middle", "font-size": 11, "font-weight": 700, fill: "#fff", stroke: "#000", "stroke-width": 2.4, "paint-order": "stroke" }, row.letter));
}

const SHAPES = {
  box: { d: "M5,3H21V15H5Z", fill: true }, disc: { d: "M5,9a8,5 0 1 0 16,0a8,5 0 1 0 -16,0", fill: true },
  thin: { d: "M2,9H24", wide: 2.5 }, thick: { d: "M2,9H24", wide: 6 }, upright: { d: "M13,1V17", wide: 2 },
  cross: { d: "M7,3L19,15M19,3L7,15", wide: 3 }, ringed: { d: "M1,9H17M18,9m-6,0a6,6 0 1 0 12,0a6,6 0 1 0 -12,0", wide: 4 },
};

/** A part of the line by its shape and colour. */
function shape(row) {
  const { d, wide, fill } = SHAPES[row.shape];
  return svg("svg", { ...SIZE, "aria-hidden": "true" },
      svg("path", { d, fill: fill ? row.colour : "none", stroke: row.colour, "stroke-width": wide || 1 }));
}

/** The lines of a hatch, as the view draws them. */
function lines(hatch) {
  const step = hatch > 4 ? 4 : 7, way = hatch % 4;
  const { width: w, height: t } = SIZE;
  let d = "";
  for (let k = -t; k < w + t; k += step) {
    if (way === 0) d += `M${k},0V${t}`;
    else if (way === 1) d += k >= 0 && k <= t ? `M0,${k}H${w}` : "";
    else if (way === 2) d += `M${k},0l${t},${t}`;
    else d += `M${k},${t}l${t},${-t}`;
  }
  return d;
}

/** The legend; the rows of categories filter when they are pressed. */
export function showLegend(host, column, scale, { hatched, faces, line, notes, filtered, onFilter }) {
  host.replaceChildren(h("details", { open: true }, h("summary", {}, column.label),
      h("ul", {}, ...scale.rows.map((row) => h("li", {}, row.value === undefined
        ? h("span", { class: "row" }, swatch(row, hatched), row.text)
        : h("button", {
          type: "button", class: "row", "aria-pressed": String(filtered === String(row.value)), title: "Show only these",
          onclick: () => onFilter(String(row.value)),
        }, swatch(row, hatched), row.text))),
        faces && h("li", {}, h("span", { class: "row" }, swatch({ colour: "#d9d7d0", hatch: 6, letter: "" }, true), "pale and lined: covered or not coated")),
          ...line.map((row) => h("li", {}, h("span", { class: "row" }, shape(row), row.text)))),
      ...notes.map((n) => h("p", {}, n))));
}
