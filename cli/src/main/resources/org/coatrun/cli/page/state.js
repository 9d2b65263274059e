/** What of the page a link carries: kept in the fragment, so that it never leaves the machine. */
export function readState() {
  const state = {};
  for (const pair of location.hash.slice(1).split("&")) {
    const at = pair.indexOf("=");
    if (at > 0) {
      try { state[pair.slice(0, at)] = decodeURIComponent(pair.slice(at + 1)); } catch { /* a mangled link: leave the part out */ }
    }
  }
  return state;
}

export function linkTo(state) {
  const pairs = Object.entries(state).filter(([, v]) => v !== "" && v !== null && v !== undefined && v !== false);
  return `${location.href.split("#")[0]}#${pairs.map(([k, v]) => `${k}=${encodeURIComponent(v)}`).join("&")}`;
}

/** As much of a choice as a link has room for. */
const MOST_CHOSEN = 40;

/** The state of the page: what is shown, chosen and looked at. */
export function stateOf(model, controls, scene) {
  return {
    chosen: model.chosen.slice(0, MOST_CHOSEN).map((e) => e.guid || e.step).join(","),
    ...controls,
    storey: model.top === model.data.storeys.length && !model.only ? "" : model.top,
    only: model.only && 1, isolated: model.isolated && 1, search: model.query,
    filters: [...model.filters].map(([k, v]) => `${k}:${v}`).join("|"),
    around: model.surroundings === "through" ? "" : model.surroundings, counted: !model.leftOut && 1,
    view: scene?.viewpoint,
  };
}

/** Puts a saved state into the model; what does not fit is left out. */
export function putInto(model, saved) {
  model.clear();
  const storey = Number(saved.storey);
  if (Number.isInteger(storey) && storey >= 1 && storey <= model.data.storeys.length) model.top = storey;
  model.only = saved.only === "1";
  model.isolated = saved.isolated === "1";
  model.query = saved.search || "";
  for (const pair of (saved.filters || "").split("|")) {
    const at = pair.indexOf(":");
    if (at > 0 && model.data.columns.some((c) => c.key === pair.slice(0, at))) model.filters.set(pair.slice(0, at), pair.slice(at + 1));
  }
  if (["solid", "off"].includes(saved.around)) model.surroundings = saved.around;
  model.leftOut = saved.counted !== "1";
  const wanted = (saved.chosen || "").split(",").filter(Boolean);
  model.chosen = wanted.map((id) => model.elements.find((e) => e.guid === id || String(e.step) === id)).filter(Boolean);
}
