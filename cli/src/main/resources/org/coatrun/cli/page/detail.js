import { h } from "./dom.js";
import { formatWithUnit } from "./quantity.js";

/** The panel beside the view: all that is known of one element, with its reasons. */
export function showDetail(host, element, data, choose) {
  if (!element) {
    host.replaceChildren(h("h2", {}, "Nothing chosen"), h("p", {}, "Choose a member in the view or in the table."));
    return;
  }
  const rows = data.columns.filter((c) => element[c.key] !== null && element[c.key] !== undefined && element[c.key] !== "");
  host.replaceChildren(
      h("h2", {}, [element.mark, element.name].filter(Boolean).join(" · ") || element.guid || `#${element.step}`),
      h("dl", {}, ...rows.flatMap((c) => [h("dt", {}, c.label), h("dd", {}, formatWithUnit(element[c.key], c.kind))])),
      ...covers(element, data, choose),
      ...reasons(element),
      ...findings(element, data));
}

function covers(element, data, choose) {
  if (!element.covers || element.covers.length === 0) return [];
  return [h("h2", {}, "Covered by"), h("ul", {}, ...element.covers.map((c) => {
    const by = data.elements[c.by];
    const label = by ? [by.mark, by.name, by.guid].find(Boolean) : "another element";
    const text = `${formatWithUnit(c.area, "area")} ${c.how}`;
    return h("li", {}, by ? h("button", { type: "button", onclick: () => choose(by) }, label) : label, " ", text);
  }))];
}

function reasons(element) {
  if (!element.reasons || element.reasons.length === 0) return [];
  return [h("h2", {}, "Reasons"), h("dl", {}, ...element.reasons.flatMap(([label, text]) => [h("dt", {}, label), h("dd", {}, text)]))];
}

function findings(element, data) {
  const own = data.findings.filter((f) => f.element === element.n);
  if (own.length === 0) return [];
  return [h("h2", {}, "Findings"), h("ul", {}, ...own.map((f) => h("li", {}, `${f.code}: ${f.sentence} ${f.remedy}`)))];
}
