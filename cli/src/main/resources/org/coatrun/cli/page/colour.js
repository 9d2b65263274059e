import { formatWithUnit } from "./quantity.js";

/** Ramps fall in lightness in normal vision and in the three kinds of colour blindness. */
const SEQUENCE = {
  light: ["#ae931d", "#6f8d2a", "#048149", "#00665e", "#004e5c", "#003659", "#160f5e"],
  dark: ["#535eb1", "#2782c4", "#00a3be", "#00c1b2", "#73d799", "#c2e483", "#ffeda9"],
};
const CATEGORIES = {
  light: ["#102d55", "#5d2b00", "#600f9d", "#406200", "#944666", "#0079bc", "#9c7e00", "#00aa7d"],
  dark: ["#4f6f9b", "#bf6000", "#a969f1", "#80b433", "#eb95b5", "#8fcdff", "#ffd43c", "#b1ffdd"],
};
const UNKNOWN = { light: "#b9b9b3", dark: "#5c636a" };
const QUIET = { light: "#dcdad2", dark: "#3a4148" };

export const rgb = (hex) => [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16));

/**
 * A scale for one column: a colour and a hatch for each element, and the rows of its legend.
 * Categories beyond eight share the last colour but keep their own letter.
 */
export function scaleFor(column, elements, theme) {
  const values = elements.filter((e) => e.kind === "member" || e.kind === "deck").map((e) => e[column.key])
      .filter((v) => v !== null && v !== undefined && v !== "");
  return column.scale === "sequence" ? sequence(column, values, theme) : categories(column, values, theme);
}

function categories(column, values, theme) {
  const counts = new Map();
  values.forEach((v) => counts.set(v, (counts.get(v) || 0) + 1));
  const names = column.order ? column.order.filter((n) => counts.has(n)) : [...counts.keys()];
  if (!column.order) names.sort((a, b) => (typeof a === "number" ? a - b : String(a).localeCompare(String(b))));
  const palette = CATEGORIES[theme];
  const index = new Map(names.map((name, i) => [name, i]));
  return {
    of(element) {
      const i = index.get(element[column.key]);
      return i === undefined ? unknown(element, theme) : { colour: palette[Math.min(i, 7)], hatch: 1 + (i % 8) };
    },
    rows: names.map((name, i) => ({
      colour: palette[Math.min(i, 7)], hatch: 1 + (i % 8), letter: String.fromCharCode(65 + (i % 26)),
      text: `${column.kind ? formatWithUnit(name, column.kind) || name : name} (${counts.get(name)})`,
    })),
  };
}

function sequence(column, values, theme) {
  const ramp = SEQUENCE[theme];
  let low = Infinity, high = -Infinity;
  for (const v of values) { low = Math.min(low, v); high = Math.max(high, v); }
  const span = high > low ? high - low : 1;
  const step = (v) => Math.max(0, Math.min(ramp.length - 1, Math.floor(((v - low) / span) * ramp.length)));
  return {
    of(element) {
      const v = element[column.key];
      return v === null || v === undefined ? unknown(element, theme) : { colour: ramp[step(v)], hatch: 1 + step(v) };
    },
    rows: values.length === 0 ? [] : ramp.map((colour, i) => ({
      colour, hatch: 1 + i, letter: String.fromCharCode(65 + i),
      text: `${formatWithUnit(low + (span * i) / ramp.length, column.kind)} to ${formatWithUnit(low + (span * (i + 1)) / ramp.length, column.kind)}`,
    })),
  };
}

function unknown(element, theme) {
  return { colour: element.kind === "member" ? UNKNOWN[theme] : QUIET[theme], hatch: 0 };
}
