import { h, known } from "./dom.js";
import { nameOf } from "./model.js";
import { format, formatWithUnit, unitOf } from "./quantity.js";

/** The panel beside the view: all that is known of what is chosen, with its reasons. */
export function showCard(host, model, { onChoose, onFinding, more }) {
  const element = model.last;
  if (!element) {
    host.replaceChildren(h("h2", {}, "Nothing chosen"),
        h("p", {}, "Choose a member in the view or in a list. With Ctrl or Shift held, or the Space bar, further ones are added."));
    return;
  }
  host.replaceChildren(
      ...together(model),
      h("h2", {}, nameOf(element)),
      ...groups(element, model.data.columns),
      ...covers(element, model, onChoose),
      ...(more ? more(element) : []),
      ...findings(element, model.data, onFinding));
}

/** Sums of several chosen ones. */
function together(model) {
  if (model.chosen.length < 2) return [];
  const sums = model.data.columns.filter((c) => c.sum);
  const of = (c) => model.chosen.reduce((s, e) => s + (e[c.key] || 0), 0);
  return [h("section", { class: "together" }, h("h2", {}, `${model.chosen.length} chosen together`),
      h("dl", {}, ...sums.flatMap((c) => pair(c.label, formatWithUnit(of(c), c.kind)))))];
}

function groups(element, columns) {
  const names = [...new Set(columns.map((c) => c.group || ""))];
  return names.flatMap((name) => {
    const rows = columns.filter((c) => (c.group || "") === name && known(element[c.key]));
    if (rows.length === 0) return [];
    return [...(name ? [h("h3", {}, name)] : []), h("dl", {}, ...rows.flatMap((c) => pair(c.label, value(element, c))))];
  });
}

function value(element, column) {
  return formatWithUnit(element[column.key], column.kind);
}

const pair = (label, text) => [h("dt", {}, label), h("dd", {}, text)];

function covers(element, model, onChoose) {
  if (element.covers.length === 0) return [];
  return [h("h3", {}, "Covered by"), h("ul", {}, ...element.covers.map((c) => {
    const by = model.elements[c.by];
    return h("li", {}, by ? h("button", { type: "button", onclick: () => onChoose(by) }, nameOf(by)) : "another element",
        ` ${format(c.area, "area")} ${unitOf("area")} ${c.how}`);
  }))];
}

function findings(element, data, onFinding) {
  const own = data.findings.filter((f) => f.element === element.n);
  if (own.length === 0) return [];
  return [h("h3", {}, "Findings"), h("ul", {}, ...own.map((f) => h("li", {},
      h("button", { type: "button", onclick: () => onFinding(f) }, f.code), ` ${f.sentence} ${f.remedy}`)))];
}
