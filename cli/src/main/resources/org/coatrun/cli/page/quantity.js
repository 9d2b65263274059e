/** How quantities read in US customary and SI units; the data is SI. */
const IN = 0.0254, FT = 0.3048;
const KINDS = {
  area: { us: [1 / (FT * FT), "ft²", 1], si: [1, "m²", 2] },
  length: { us: [1 / FT, "ft", 2], si: [1, "m", 3] },
  perimeter: { us: [1 / IN, "in", 1], si: [1000, "mm", 0] },
  thickness: { us: [1 / IN, "in", 4], si: [1000, "mm", 0] },
  mass: { us: [1 / 0.45359237, "lb", 0], si: [1, "kg", 1] },
  factor: { us: [1, "1/m", 1], si: [1, "1/m", 1] },
  volume: { us: [1 / (FT * FT * IN), "bf", 1], si: [1, "m³", 4] },
  hours: { us: [1, "h", 2], si: [1, "h", 2] },
  pressure: { us: [1 / 6894.757293168, "psi", 1], si: [1e-3, "kPa", 0] },
  plain: { us: [1, "", 3], si: [1, "", 3] },
  count: { us: [1, "", 0], si: [1, "", 0] },
};

let system = "us";
export const setSystem = (s) => { system = s; };
export const unitOf = (kind) => (KINDS[kind] ? KINDS[kind][system][1] : "");
export const isNumber = (kind) => kind in KINDS;

/** A value in the chosen units, without the unit; empty where unknown. */
export function format(value, kind) {
  if (value === null || value === undefined) return "";
  if (!KINDS[kind]) return String(value);
  const [factor, , digits] = KINDS[kind][system];
  return (value * factor).toLocaleString("en-US", { minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: false });
}

export function formatWithUnit(value, kind) {
  const text = format(value, kind);
  const unit = unitOf(kind);
  return text && unit ? `${text} ${unit}` : text;
}

/** Heading of a column with its unit. */
export const heading = (column) => (unitOf(column.kind) ? `${column.label}, ${unitOf(column.kind)}` : column.label);
