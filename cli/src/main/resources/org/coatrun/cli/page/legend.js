import { h } from "./dom.js";

const SVG = "http://www.w3.org/2000/svg";

function svg(tag, attributes, ...children) {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

/** A swatch with its letter, so that the legend reads without colour too. */
function swatch(row) {
  const letter = svg("text", { x: 11, y: 13, "text-anchor": "middle", "font-size": 11, "font-weight": 700, fill: "#fff", stroke: "#000", "stroke-width": 2.4, "paint-order": "stroke" });
  letter.textContent = row.letter;
  return svg("svg", { width: 22, height: 17, "aria-hidden": "true" }, svg("rect", { width: 22, height: 17, fill: row.colour, stroke: "#777" }), letter);
}

export function showLegend(host, column, scale, notes) {
  host.replaceChildren(h("h2", {}, column.label),
      h("ul", {}, ...scale.rows.map((row) => h("li", {}, swatch(row), row.text))),
      ...notes.map((n) => h("p", {}, n)));
}
