import { byId, h } from "./dom.js";
import { countOf } from "./model.js";
import { Table } from "./table.js";

/** The lists beside the view, one at a time. */
export class Lists {
  constructor(model, extra, { onChoose }) {
    this.model = model;
    this.onChoose = onChoose;
    const { data, elements } = model;
    this.all = [
      { key: "members", label: "Members", kind: "member", columns: data.columns.filter((c) => c.members), rows: elements.filter((e) => e.kind === "member") },
      { key: "decks", label: "Decks", kind: "deck", columns: data.columns.filter((c) => c.decks), rows: elements.filter((e) => e.kind === "deck") },
      { key: "findings", label: "Findings", columns: data.findingColumns, rows: data.findings },
      ...(data.tables || []),
      ...extra,
      { key: "basis", label: "Basis and cautions", show: (host) => prose(host, data.basis) },
    ].filter((l) => l.show || l.rows.length > 0 || l.key === "findings");
    this.table = null;
  }

  open(key) {
    const list = this.all.find((l) => l.key === key) || this.all[0];
    this.key = list.key;
    byId("tabs").replaceChildren(...this.all.map((l) => h("button", {
      type: "button", role: "tab", id: `tab-${l.key}`, "aria-controls": "list", "aria-selected": l === list ? "true" : "false",
      tabindex: l === list ? 0 : -1, onclick: () => this.open(l.key), onkeydown: (e) => this.along(e, l),
    }, l.rows ? `${l.label} (${l.rows.length})` : l.label)));
    byId("list").setAttribute("aria-labelledby", `tab-${list.key}`);
    byId("list").scrollTop = 0;
    byId("list-tools").hidden = !list.rows;
    this.table = null;
    if (list.rows) this.openTable(list); else list.show(byId("list"));
  }

  along(event, list) {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (!step) return;
    const next = this.all[(this.all.indexOf(list) + step + this.all.length) % this.all.length];
    this.open(next.key);
    byId(`tab-${next.key}`).focus();
  }

  openTable(list) {
    this.table = new Table(byId("list"), {
      columns: list.columns, rows: list.rows, rest: () => (list.kind ? this.model.restOf(list.kind) : []), onChoose: this.onChoose,
      chosen: (row) => (row.kind ? this.model.chosen.includes(row) : row === this.finding),
    });
    this.refilter();
  }

  refilter() {
    if (!this.table) return;
    const q = this.model.query.toLowerCase();
    this.table.filter((row) => (row.kind ? this.model.listed(row)
      : q === "" || Object.values(row).some((v) => String(v ?? "").toLowerCase().includes(q))));
    const unlisted = countOf(this.model.rest.filter((g) => this.table.all[0]?.kind === g.kind));
    byId("count").textContent = `${this.table.rows.length} of ${this.table.all.length} rows${unlisted > 0 ? `; ${unlisted} more are not listed` : ""}`;
  }

  /** Follows what was chosen elsewhere: the list that holds it comes up. */
  follow(element, openIt) {
    if (element && openIt && !(this.table && this.table.all.includes(element)) && this.key !== "line") {
      const holder = this.all.find((l) => l.rows && l.rows.includes(element));
      if (holder && this.key !== "findings") { this.open(holder.key); }
    }
    if (this.table) this.table.showChosen(element);
  }
}

function prose(host, parts) {
  host.replaceChildren(h("div", { class: "prose" }, ...parts.flatMap((part) =>
    [h("h2", {}, part.title), h("ul", {}, ...part.lines.map((l) => h("li", {}, l)))])));
}
