/** How quantities read in US customary and SI units; the data is SI. */
const IN = 0.0254, FT = 0.3048;
const KINDS = {
  area: { us: [1 / (FT * FT), "ft²", 1], si: [1, "m²", 2] },
  length: { us: [1 / FT, "ft", 2], si: [1, "m", 3] },
  perimeter: { us: [1 / IN, "in", 1], si: [1000, "mm", 0] },
  thickness: { us: [1 / IN, "in", 4], si: [1000, "mm", 1] },
  exact: { us: [1 / IN, "in", 4], si: [1000, "mm", 2] },
  mass: { us: [1 / 0.45359237, "lb", 0], si: [1, "kg", 1] },
  factor: { us: [1, "1/m", 1], si: [1, "1/m", 1] },
  volume: { us: [1 / (FT * FT * IN), "bf", 1], si: [1, "m³", 4] },
  hours: { us: [1, "h", 2], si: [1, "h", 2] },
  pressure: { us: [1 / 6894.757293168, "psi", 1], si: [1e-3, "kPa", 0] },
  plain: { us: [1, "", 3], si: [1, "", 3] },
  bags: { us: [1, "", 2], si: [1, "", 2] },
  count: { us: [1, "", 0], si: [1, "", 0] },
};
const SIXTEENTHS = 16;

let system = "us";
export const setSystem = (s) => { system = s; };
export const unitOf = (kind) => (KINDS[kind] ? KINDS[kind][system][1] : "");
export const isNumber = (kind) => kind in KINDS;

/** A value in the chosen units, without the unit; empty where unknown. */
export function format(value, kind) {
  if (value === null || value === undefined) return "";
  if (!KINDS[kind]) return String(value);
  const [factor, , digits] = KINDS[kind][system];
  return digitsOf(digits).format(value * factor);
}

/** One for each number of digits: to make one costs more than to use it a hundred times. */
const formats = [];
const digitsOf = (digits) => (formats[digits] ??= new Intl.NumberFormat("en-US", { minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: false }));

/** A value with its unit; thickness in inches as the trade's fraction, hours without idle zeros. */
export function formatWithUnit(value, kind) {
  if (kind === "hours" && known(value)) return `${Number(value.toFixed(2))} h`;
  const fraction = kind === "thickness" && system === "us" && known(value) ? sixteenths(value / IN) : "";
  const text = fraction || format(value, kind);
  const unit = unitOf(kind);
  return text && unit ? `${text} ${unit}` : text;
}

const known = (value) => value !== null && value !== undefined;

function sixteenths(inches) {
  if (inches === 0) return "0";
  const n = Math.round(inches * SIXTEENTHS);
  if (!Number.isFinite(inches) || n === 0 || Math.abs(inches * SIXTEENTHS - n) > 1e-3) return "";
  let top = n % SIXTEENTHS, bottom = SIXTEENTHS;
  while (top && top % 2 === 0) { top /= 2; bottom /= 2; }
  const whole = Math.floor(n / SIXTEENTHS);
  return top === 0 ? `${whole}` : `${whole ? `${whole} ` : ""}${top}/${bottom}`;
}

/** Heading of a column with its unit. */
export const heading = (column) => (unitOf(column.kind) ? `${column.label}, ${unitOf(column.kind)}` : column.label);
