import { h, known } from "./dom.js";
import { formatWithUnit } from "./quantity.js";

const MOST_VALUES = 120;

/** A choice for each column whose values are few. */
export function showFilters(host, model) {
  const columns = model.data.columns.filter((c) => c.filter);
  host.replaceChildren(...columns.flatMap((c) => {
    const values = [...new Set(model.steel.map((e) => e[c.key]).filter(known))];
    if (values.length < 2 || values.length > MOST_VALUES) return [];
    values.sort((a, b) => (typeof a === "number" ? a - b : String(a).localeCompare(String(b), "en", { numeric: true })));
    const now = model.filters.get(c.key) ?? "";
    return [h("label", {}, `${c.label} `, h("select", { id: `filter-${c.key}`, onchange: (e) => model.filter(c.key, e.target.value) },
        h("option", { value: "" }, "all"),
        ...values.map((v) => h("option", { value: v, selected: String(v) === now }, formatWithUnit(v, c.kind)))))];
  }));
}
