import { h, svg } from "./dom.js";

const SIZE = { width: 26, height: 18 };

/** A swatch with its letter, and its hatch where the view is hatched: it reads without colour too. */
function swatch(row, hatched) {
  return svg("svg", { ...SIZE, "aria-hidden": "true" },
      svg("rect", { ...SIZE, fill: row.colour, stroke: "#777" }),
      hatched && row.hatch > 0 && svg("path", { d: lines(row.hatch), stroke: "#fff", "stroke-opacity": 0.75, "stroke-width": 1.4, fill: "none" }),
      svg("text", { x: 13, y: 13.5, "text-anchor": "middle", "font-size": 11, "font-weight": 700, fill: "#fff", stroke: "#000", "stroke-width": 2.4, "paint-order": "stroke" }, row.letter));
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
          ...line.map((row) => h("li", {}, h("span", { class: "row" }, swatch(row, false), row.text)))),
      ...notes.map((n) => h("p", {}, n))));
}
