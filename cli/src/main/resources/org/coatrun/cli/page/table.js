import { h } from "./dom.js";
import { format, heading, isNumber } from "./quantity.js";

const ROWS = 200;

/** A list with sorting, filtering, totals and pages; all rows when printed or saved. */
export class Table {
  constructor(host, { columns, rows, onChoose, rowKey }) {
    Object.assign(this, { host, columns, all: rows, onChoose, rowKey, page: 0, sort: null, down: false, chosen: null });
    this.rows = rows;
  }

  filter(test) {
    this.rows = this.all.filter(test);
    this.page = 0;
    this.order();
  }

  order() {
    if (this.sort) {
      const { key, kind } = this.sort, sign = this.down ? -1 : 1;
      const value = (row) => row[key];
      this.rows = [...this.rows].sort((a, b) => {
        const x = value(a), y = value(b);
        if (x === y) return 0;
        if (x === null || x === undefined || x === "") return 1;
        if (y === null || y === undefined || y === "") return -1;
        return sign * (isNumber(kind) ? x - y : String(x).localeCompare(String(y), "en", { numeric: true }));
      });
    }
    this.show();
  }

  choose(row) {
    this.chosen = row;
    const at = this.rows.indexOf(row);
    if (at >= 0) this.page = Math.floor(at / ROWS);
    this.show();
    // only the list scrolls: the view above it stays in sight
    const chosen = this.host.querySelector('tr[aria-selected="true"]');
    if (chosen) this.host.scrollTop = Math.max(0, chosen.offsetTop - this.host.clientHeight / 2);
  }

  show(everything = false) {
    const from = everything ? 0 : this.page * ROWS;
    const shown = everything ? this.rows : this.rows.slice(from, from + ROWS);
    const pages = Math.max(1, Math.ceil(this.rows.length / ROWS));
    const turn = (by) => () => { this.page = Math.min(pages - 1, Math.max(0, this.page + by)); this.show(); };
    this.host.replaceChildren(...[
        h("table", {}, this.head(), h("tbody", {}, ...shown.map((r) => this.row(r))), this.foot()),
        pages > 1 && !everything ? h("div", { class: "pages" },
            h("button", { type: "button", onclick: turn(-1) }, "Earlier rows"),
            `rows ${from + 1} to ${from + shown.length} of ${this.rows.length}`,
            h("button", { type: "button", onclick: turn(1) }, "Later rows")) : null].filter(Boolean));
  }

  head() {
    return h("thead", {}, h("tr", {}, ...this.columns.map((c) => {
      const sorted = this.sort === c;
      return h("th", { scope: "col", class: isNumber(c.kind) ? "n" : "", "aria-sort": sorted ? (this.down ? "descending" : "ascending") : "none" },
          h("button", { type: "button", onclick: () => { this.down = sorted && !this.down; this.sort = c; this.order(); } },
              heading(c) + (sorted ? (this.down ? " ▾" : " ▴") : "")));
    })));
  }

  row(r) {
    const choose = () => this.onChoose(r);
    return h("tr", {
      tabindex: 0, "aria-selected": r === this.chosen ? "true" : "false", onclick: choose,
      onkeydown: (e) => { if (e.key === "Enter" || e.key === " ") { e.preventDefault(); choose(); } },
    }, ...this.columns.map((c) => h("td", { class: isNumber(c.kind) ? "n" : c.long ? "long" : "" }, format(r[c.key], c.kind))));
  }

  foot() {
    const totals = this.columns.map((c) => (c.sum ? this.rows.reduce((s, r) => s + (r[c.key] || 0), 0) : null));
    if (totals.every((t) => t === null)) return null;
    return h("tfoot", {}, h("tr", {}, ...this.columns.map((c, i) => (i === 0
      ? h("th", { scope: "row" }, "Total") : h("td", { class: isNumber(c.kind) ? "n" : "" }, totals[i] === null ? "" : format(totals[i], c.kind))))));
  }

  /** What is shown, all pages, as lines of cells; headings first. */
  cells() {
    return [this.columns.map(heading), ...this.rows.map((r) => this.columns.map((c) => format(r[c.key], c.kind)))];
  }

  csv() {
    return this.cells().map((line) => line.map(quote).join(",")).join("\r\n") + "\r\n";
  }

  text() {
    return this.cells().map((line) => line.map((c) => c.replace(/[\t\r\n]+/g, " ")).join("\t")).join("\n");
  }
}

/** A cell that a spreadsheet would take for a formula is led by an apostrophe. */
function quote(cell) {
  const safe = /^[=+\-@\t\r]/.test(cell) && Number.isNaN(Number(cell)) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
