import { known } from "./dom.js";

const SEARCHED = ["mark", "section", "name", "guid"];

/** What covers an element, over how much and how, from three numbers each. */
const coversOf = (numbers = []) => Array.from({ length: numbers.length / 3 }, (_, i) => (
  { by: numbers[3 * i], area: numbers[3 * i + 1], how: numbers[3 * i + 2] ? "encased" : "in contact" }));

/**
 * What is shown and what is chosen. Everything on the page follows it: who changes it calls
 * {@link changed}, who shows something listens.
 */
export class Model {
  constructor(data) {
    this.data = data;
    this.elements = data.elements;
    this.elements.forEach((e, n) => { e.n = n; e.covers = coversOf(e.covers); });
    this.steel = this.elements.filter((e) => e.kind === "member" || e.kind === "deck");
    this.scales = data.columns.filter((c) => c.scale && this.elements.some((e) => known(e[c.key])));
    this.rest = data.rest || [];
    this.chosen = [];
    this.several = false;
    this.isolated = false;
    this.listeners = [];
    this.clear();
  }

  /** Takes all filters off. */
  clear() {
    this.query = "";
    this.top = this.data.storeys.length;
    this.only = false;
    this.filters = new Map();
    this.surroundings = "through";
    this.leftOut = true;
  }

  listen(listener) {
    this.listeners.push(listener);
  }

  changed(what = "shown") {
    this.listeners.forEach((l) => l(what));
  }

  get last() {
    return this.chosen[this.chosen.length - 1] ?? null;
  }

  inStorey(element) {
    if (!known(element.level)) return this.top === this.data.storeys.length;
    if (!this.only) return element.level < this.top;
    return element.level === this.top - 1;
  }

  found(element) {
    const q = this.query.toLowerCase();
    return q === "" || SEARCHED.some((k) => String(element[k] ?? "").toLowerCase().includes(q));
  }

  passes(element) {
    for (const [key, value] of this.filters) {
      if (String(element[key] ?? "") !== value) return false;
    }
    return true;
  }

  /** Whether a list shows it. */
  listed(element) {
    return this.found(element) && this.inStorey(element) && this.passes(element);
  }

  /** Sums of what has no row of its own and is not filtered out; null while a search looks into rows. */
  restOf(kind) {
    if (this.rest.length === 0) return [];
    return this.query === "" ? this.rest.filter((g) => g.kind === kind && this.inStorey(g) && this.passes(g)) : null;
  }

  /** Whether the view shows it. */
  visible(element) {
    if (this.isolated && this.chosen.length > 0) {
      return this.chosen.includes(element) || this.chosen.some((c) => c.covers.some((k) => k.by === element.n));
    }
    if (!this.inStorey(element)) return false;
    if (element.kind !== "member" && this.surroundings === "off") return false;
    if (known(element.status) && element.status !== "counted" && !this.leftOut) return false;
    if (element.kind === "slab" || element.kind === "wall") return this.filters.size === 0;
    if (element.kind === "deck") return this.passes(element) || this.filters.size === 0;
    return this.found(element) && this.passes(element);
  }

  /** Whether the view shows it so that what is behind can be seen. */
  through(element) {
    return element.kind !== "member" && this.surroundings === "through";
  }

  /** Chooses one element alone, or adds it to those chosen, or takes it from them. */
  choose(element, add = false) {
    if (!element) this.chosen = add ? this.chosen : [];
    else if (!add) this.chosen = [element];
    else if (this.chosen.includes(element)) this.chosen = this.chosen.filter((e) => e !== element);
    else this.chosen = [...this.chosen, element];
    this.changed("chosen");
  }

  /** Chooses an element that filters may hide: they give way. */
  reveal(element) {
    if (element && !this.isolated && !this.visible(element)) this.clear();
    this.choose(element);
  }

  filter(key, value) {
    if (value === "" || this.filters.get(key) === value) this.filters.delete(key);
    else this.filters.set(key, value);
    this.changed();
  }
}

/** How many elements stand behind rows and sums. */
export const countOf = (rows) => rows.reduce((s, r) => s + (r.count || 1), 0);

/** What to call an element. */
export const nameOf = (e) => [e.mark, e.name].filter(Boolean).join(" · ") || e.guid || `#${e.step}`;
