import { byId, h } from "./dom.js";
import { countOf } from "./model.js";
import { formatWithUnit, heading, format, isNumber } from "./quantity.js";

const MOST_FINDINGS = 60;
/** A table of so many rows stays on one sheet. */
const SHORT = 20;

/** What goes on paper beside the picture: sums, findings, basis and cautions. */
export function layOutPaper(model, scene, more) {
  const { data } = model;
  const all = (kind) => [...model.elements, ...model.rest].filter((e) => e.kind === kind);
  const members = all("member"), decks = all("deck");
  const grouped = data.columns.filter((c) => (c.filter || c.key === "storey") && members.some((e) => e[c.key] !== undefined));
  byId("paper").replaceChildren(
      ...(data.lacks.length > 0 ? [h("ul", {}, ...data.lacks.map((l) => h("li", {}, l)))] : []),
      ...(scene ? [picture(scene.canvas), legend()] : []),
      h("p", {}, shownNow(model)),
      ...grouped.map((c) => sums(titleOf(c), members, c, data.columns.filter((k) => k.sum && k.members))),
      ...(decks.length > 0 ? [sums("Decks by storey", decks, data.columns.find((c) => c.key === "storey"), data.columns.filter((k) => k.sum && k.decks))] : []),
      ...chosen(model),
      ...(more ? more() : []),
      ...findings(data.findings),
      ...data.basis.flatMap((p) => [h("h2", {}, p.title), h("ul", {}, ...p.lines.map((l) => h("li", {}, l)))]));
}

function titleOf(column) {
  const label = column.label.toLowerCase();
  return label.endsWith(" by") ? `Members, ${label}` : `Members by ${label}`;
}

/** A copy of the view: what a drawing surface of its own kind shows may lag behind on paper. */
function picture(view) {
  const copy = h("canvas", { width: view.width, height: view.height, role: "img", "aria-label": "The model" });
  copy.getContext("2d").drawImage(view, 0, 0);
  return copy;
}

function legend() {
  const copy = byId("legend").firstElementChild.cloneNode(true);
  copy.open = true;
  return h("div", { class: "legend" }, copy);
}

function shownNow(model) {
  const parts = [model.query && `search “${model.query}”`,
    model.top < model.data.storeys.length && `storeys up to ${model.data.storeys[model.top - 1]}`,
    ...[...model.filters].map(([k, v]) => `${model.data.columns.find((c) => c.key === k).label}: ${v}`)].filter(Boolean);
  const whole = model.rest.length === 0 ? "the whole model" : "all that this page lists one by one";
  return parts.length === 0 ? `The picture shows ${whole}; the sums are of all members and decks.`
    : `The picture shows a part of the model (${parts.join("; ")}); the sums are of all members and decks.`;
}

function sums(title, rows, by, columns) {
  const groups = new Map();
  for (const r of rows) {
    const key = r[by.key] ?? "";
    if (!groups.has(key)) groups.set(key, []);
    groups.get(key).push(r);
  }
  const names = [...groups.keys()].sort((a, b) => (typeof a === "number" && typeof b === "number" ? a - b
    : by.key === "storey" ? levelOf(groups.get(a)) - levelOf(groups.get(b)) : String(a).localeCompare(String(b), "en", { numeric: true })));
  const line = (label, group) => h("tr", {}, h("th", { scope: "row" }, label), h("td", { class: "n" }, String(countOf(group))),
      ...columns.map((c) => h("td", { class: "n" }, format(group.reduce((s, r) => s + (r[c.key] || 0), 0), c.kind))));
  return h("table", { class: names.length > SHORT ? "" : "short" }, h("caption", {}, title),
      h("thead", {}, h("tr", {}, h("th", { scope: "col" }, by.label), h("th", { scope: "col", class: "n" }, "Elements"),
          ...columns.map((c) => h("th", { scope: "col", class: isNumber(c.kind) ? "n" : "" }, heading(c))))),
      h("tbody", {}, ...names.map((n) => line(n === "" ? "none" : formatWithUnit(n, by.kind), groups.get(n)))),
      h("tfoot", {}, line("All", rows)));
}

const levelOf = (group) => group[0].level ?? Infinity;

function chosen(model) {
  if (model.chosen.length === 0) return [];
  return [h("h2", {}, "Chosen"), ...[...byId("detail").children].map((c) => c.cloneNode(true))];
}

function findings(all) {
  if (all.length === 0) return [h("h2", {}, "Findings"), h("p", {}, "None.")];
  return [h("h2", {}, `Findings (${all.length})`),
    h("ul", {}, ...all.slice(0, MOST_FINDINGS).map((f) => h("li", {}, `${f.code} ${f.severity}: ${f.sentence} ${f.remedy}`))),
    all.length > MOST_FINDINGS && h("p", {}, `${all.length - MOST_FINDINGS} further findings stand in findings.csv.`)].filter(Boolean);
}
