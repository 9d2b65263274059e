import { h } from "./dom.js";
import { countOf } from "./model.js";
import { format, heading, isNumber } from "./quantity.js";

const ROWS = 200;

/** A list with sorting, filtering, totals and pages; all rows when saved. */
export class Table {
  constructor(host, { columns, rows, rest, onChoose, chosen }) {
    Object.assign(this, { host, columns, all: rows, rest, onChoose, chosen, page: 0, sort: null, down: false });
    this.rows = rows;
  }

  filter(test) {
    this.rows = this.all.filter(test);
    this.page = Math.min(this.page, this.pages - 1);
    this.order();
  }

  get pages() {
    return Math.max(1, Math.ceil(this.rows.length / ROWS));
  }

  order() {
    if (this.sort) {
      const { key, kind } = this.sort, sign = this.down ? -1 : 1;
      this.rows = [...this.rows].sort((a, b) => {
        const x = a[key], y = b[key];
        if (x === y) return 0;
        if (x === null || x === undefined || x === "") return 1;
        if (y === null || y === undefined || y === "") return -1;
        return sign * (isNumber(kind) ? x - y : String(x).localeCompare(String(y), "en", { numeric: true }));
      });
    }
    this.show();
  }

  /** Brings the last chosen row into sight; only the list scrolls. */
  showChosen(row) {
    const at = this.rows.indexOf(row);
    if (at >= 0 && Math.floor(at / ROWS) !== this.page) this.page = Math.floor(at / ROWS);
    this.show();
    const line = at < 0 ? null : this.host.querySelector(`tbody tr:nth-child(${at - this.page * ROWS + 1})`);
    if (!line) return;
    const top = line.offsetTop - this.host.scrollTop;
    if (top < 60 || top > this.host.clientHeight - 90) this.host.scrollTop = Math.max(0, line.offsetTop - this.host.clientHeight / 2);
  }

  show() {
    const from = this.page * ROWS;
    const shown = this.rows.slice(from, from + ROWS);
    const focused = this.host.contains(document.activeElement) ? document.activeElement.dataset.n : undefined;
    const turn = (by) => () => { this.page = Math.min(this.pages - 1, Math.max(0, this.page + by)); this.host.scrollTop = 0; this.show(); };
    this.host.replaceChildren(...[
      h("table", {}, this.head(), h("tbody", {}, ...shown.map((r, i) => this.row(r, from + i))), this.foot()),
      this.pages > 1 && h("div", { class: "pages" },
          h("button", { type: "button", onclick: turn(-1) }, "Earlier rows"),
          `rows ${from + 1} to ${from + shown.length} of ${this.rows.length}`,
          h("button", { type: "button", onclick: turn(1) }, "Later rows"))].filter(Boolean));
    if (focused !== undefined) this.host.querySelector(`[data-n="${focused}"]`)?.focus({ preventScroll: true });
  }

  head() {
    return h("thead", {}, h("tr", {}, ...this.columns.map((c, i) => {
      const sorted = this.sort === c;
      return h("th", { scope: "col", class: isNumber(c.kind) ? "n" : "", "aria-sort": sorted ? (this.down ? "descending" : "ascending") : "none" },
          h("button", { type: "button", "data-n": `head${i}`, onclick: () => { this.down = sorted && !this.down; this.sort = c; this.order(); } },
              heading(c), sorted && h("span", { class: "sorted", "aria-hidden": "true" }, this.down ? " ▾" : " ▴")));
    })));
  }

  row(r, n) {
    const choose = (e) => this.onChoose(r, e.ctrlKey || e.metaKey || e.shiftKey || e.key === " ");
    return h("tr", {
      tabindex: 0, "data-n": n, "aria-selected": this.chosen(r) ? "true" : "false", onclick: choose,
      onkeydown: (e) => {
        if (e.key === "Enter" || e.key === " ") { e.preventDefault(); choose(e); }
        const next = e.key === "ArrowDown" ? e.target.nextElementSibling : e.key === "ArrowUp" ? e.target.previousElementSibling : null;
        if (next) { e.preventDefault(); next.focus(); }
      },
    }, ...this.columns.map((c) => h("td", { class: isNumber(c.kind) ? "n" : c.long ? "long" : "" }, format(r[c.key], c.kind))));
  }

  foot() {
    if (!this.columns.some((c) => c.sum)) return null;
    const chosen = this.all.filter((r) => this.chosen(r));
    return h("tfoot", {}, ...this.totals(), chosen.length > 0 && this.sum(`Chosen: ${chosen.length}`, chosen));
  }

  /** What has no row counts too; while it cannot be told, the sum is called that of the rows. */
  totals() {
    const rest = this.rest();
    if (rest === null) return [this.sum("Total of these rows", this.rows)];
    if (rest.length === 0) return [this.sum("Total", this.rows)];
    return [this.sum("Listed", this.rows), this.sum(`Not listed: ${countOf(rest)}`, rest), this.sum("Total", [...this.rows, ...rest])];
  }

  sum(label, rows) {
    return h("tr", {}, ...this.columns.map((c, i) => (i === 0
      ? h("th", { scope: "row" }, label)
      : h("td", { class: isNumber(c.kind) ? "n" : "" }, c.sum ? format(rows.reduce((s, r) => s + (r[c.key] || 0), 0), c.kind) : ""))));
  }

  /** What is shown, all pages, as lines of cells; headings first. */
  cells() {
    return [this.columns.map(heading), ...this.rows.map((r) => this.columns.map((c) => format(r[c.key], c.kind)))];
  }

  csv() {
    return `${this.cells().map((line) => line.map(quote).join(",")).join("\r\n")}\r\n`;
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
