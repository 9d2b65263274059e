import { known } from "./dom.js";
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
const QUIET = { light: "#e4e2da", dark: "#333a41" };

export const rgb = (hex) => [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16));

/**
 * A scale for one column: a colour and a hatch for each element, and the rows of its legend.
 * Beyond eight categories the colours come round again; each keeps its own letter.
 */
export function scaleFor(column, elements, theme) {
  const coated = elements.filter(isSteel);
  const values = coated.map((e) => e[column.key]).filter(known);
  const scale = column.scale === "sequence" ? sequence(column, values, theme) : categories(column, values, theme);
  const missing = coated.length - values.length;
  if (missing > 0) scale.rows.push({ colour: UNKNOWN[theme], hatch: 0, letter: "–", text: `none (${missing})` });
  return scale;
}

function categories(column, values, theme) {
  const counts = count(values);
  const names = (column.order || []).filter((n) => counts.has(n));
  const rest = [...counts.keys()].filter((n) => !names.includes(n));
  names.push(...rest.sort((a, b) => (typeof a === "number" ? a - b : String(a).localeCompare(String(b), "en", { numeric: true }))));
  const palette = CATEGORIES[theme];
  const index = new Map(names.map((name, i) => [name, i]));
  return {
    of: (element) => {
      const i = isSteel(element) ? index.get(element[column.key]) : undefined;
      return i === undefined ? unknown(element, theme) : { colour: palette[i % 8], hatch: 1 + (i % 8) };
    },
    rows: names.map((name, i) => ({
      colour: palette[i % 8], hatch: 1 + (i % 8), letter: letter(i), value: name,
      text: `${formatWithUnit(name, column.kind)} (${counts.get(name)})`,
    })),
  };
}

/** Few sizes get a colour each; many are put into steps of equal width. */
function sequence(column, values, theme) {
  const none = zeroIsNone(column) ? values.filter((v) => v === 0).length : 0;
  const scale = sizes(column, none === 0 ? values : values.filter((v) => v !== 0), theme);
  if (none === 0) return scale;
  return {
    of: (e) => (e[column.key] === 0 ? unknown(e, theme) : scale.of(e)),
    rows: [{ colour: UNKNOWN[theme], hatch: 0, letter: "0", value: 0, text: `none needed (${none})` }, ...scale.rows],
  };
}

const zeroIsNone = (column) => column.kind === "thickness" || column.kind === "hours";

function sizes(column, values, theme) {
  const ramp = SEQUENCE[theme];
  const counts = count(values);
  if (counts.size === 0) return { of: (e) => unknown(e, theme), rows: [] };
  const all = [...counts.keys()].sort((a, b) => a - b);
  if (all.length <= ramp.length) return few(column, all, counts, ramp, theme);
  const low = all[0], span = all[all.length - 1] - low;
  const step = (v) => Math.min(ramp.length - 1, Math.floor(((v - low) / span) * ramp.length));
  const inStep = ramp.map(() => []);
  values.forEach((v) => inStep[step(v)].push(v));
  const text = (part) => {
    const least = formatWithUnit(part.reduce((a, b) => Math.min(a, b)), column.kind), most = formatWithUnit(part.reduce((a, b) => Math.max(a, b)), column.kind);
    return `${least === most ? least : `${least} to ${most}`} (${part.length})`;
  };
  return {
    of: (e) => (known(e[column.key]) ? { colour: ramp[step(e[column.key])], hatch: 1 + step(e[column.key]) } : unknown(e, theme)),
    rows: ramp.map((colour, i) => ({ colour, hatch: 1 + i, letter: letter(i), part: inStep[i] })).filter((r) => r.part.length > 0)
        .map(({ part, ...row }) => ({ ...row, text: text(part) })),
  };
}

function few(column, sizes, counts, ramp, theme) {
  const at = sizes.map((v, i) => (sizes.length === 1 ? 3 : Math.round((i * (ramp.length - 1)) / (sizes.length - 1))));
  const index = new Map(sizes.map((v, i) => [v, at[i]]));
  return {
    of: (e) => {
      const i = index.get(e[column.key]);
      return i === undefined ? unknown(e, theme) : { colour: ramp[i], hatch: 1 + i };
    },
    rows: sizes.map((v, i) => ({
      colour: ramp[at[i]], hatch: 1 + at[i], letter: letter(i), value: v,
      text: `${formatWithUnit(v, column.kind)} (${counts.get(v)})`,
    })),
  };
}

function count(values) {
  const counts = new Map();
  values.forEach((v) => counts.set(v, (counts.get(v) || 0) + 1));
  return counts;
}

const isSteel = (element) => element.kind === "member" || element.kind === "deck";

const letter = (i) => String.fromCharCode(65 + (i % 26));

/** What has no value; what only stands around the steel is quieter still. */
function unknown(element, theme) {
  return { colour: isSteel(element) ? UNKNOWN[theme] : QUIET[theme], hatch: 0 };
}
