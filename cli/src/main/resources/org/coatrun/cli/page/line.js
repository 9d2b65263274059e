import { h } from "./dom.js";
import { format, formatWithUnit, heading } from "./quantity.js";
import { planOf } from "./plan.js";

const COMPARED = [
  ["label", "Machine spot", ""], ["cost", "Cost, relative", "count"], ["uncovered", "Places not reached", "count"],
  ["longest", "Longest hose", "length"], ["pipe", "Pipe", "length"], ["setUps", "Set-ups", "count"],
].map(([key, label, kind]) => ({ key, label, kind }));
const CHECKED = [
  ["rise", "Rise from the machine", "length"], ["storeys", "Storeys from the machine", "count"], ["flexible", "Longest hose", "length"],
  ["pipe", "Longest pipe", "length"], ["bends", "Most bends", "count"], ["quick", "Equivalent length, quick rule", "length"],
  ["byBends", "Equivalent length, by bends", "length"], ["water", "Water at the pump", "pressure"], ["booster", "Water booster", ""],
  ["drop", "Voltage drop, %", "plain"],
];

/** The line beside the view: machine spots to switch between, a plan and the checks of each floor. */
export class LinePanel {
  constructor(line, onChange) {
    this.line = line;
    this.onChange = onChange;
    this.choice = 0;
    const work = line.choices[0].cells.map((c) => c.floor);
    this.floor = work.length === 0 ? 0 : Math.min(...work);
  }

  get chosen() {
    return this.line.choices[this.choice];
  }

  /** Takes another spot or floor. */
  take(choice, floor) {
    this.choice = Math.max(0, Math.min(this.line.choices.length - 1, choice || 0));
    this.floor = Math.max(0, Math.min(this.line.floors.length - 1, floor ?? this.floor));
    if (this.host?.isConnected) this.show(this.host);
    this.onChange();
  }

  /** Shows the line to an element, or to none. */
  follow(element) {
    if (this.element === element) return;
    this.element = element;
    if (this.host?.isConnected) this.show(this.host);
  }

  /** Turns the plan to the floor that an element is sprayed from. */
  turnTo(element) {
    const [cell] = element ? this.cellsOf(element) : [];
    if (cell) this.floor = cell.floor;
  }

  /** Places and legs of the line to the element that is followed. */
  get own() {
    const cells = this.element ? this.cellsOf(this.element) : [];
    return { cells: new Set(cells), legs: new Set(cells.flatMap((c) => c.legs || [])) };
  }

  show(host) {
    this.host = host;
    const focused = document.activeElement?.id;
    host.replaceChildren(h("div", { class: "line" },
        h("div", { class: "tools" },
            h("label", {}, "Machine at ", this.select("line-spot", this.line.choices.map((c) => c.label), this.choice, (i) => this.take(i, this.floor))),
            h("label", {}, "Floor ", this.select("line-floor", this.line.floors.map((f) => f.name), this.floor, (i) => this.take(this.choice, i)))),
        h("figure", {}, planOf(this.line, this.chosen, this.floor, this.own), h("figcaption", {}, legendWords())),
        ...this.checks(this.floor), ...this.missed(this.floor), this.comparison(), ...this.lists()));
    if (focused) document.getElementById(focused)?.focus();
  }

  select(id, names, at, onTake) {
    return h("select", { id, onchange: (e) => onTake(Number(e.target.value)) }, ...names.map((name, i) => h("option", { value: i, selected: i === at }, name)));
  }

  checks(n) {
    const check = this.chosen.checks.find((c) => c.floor === n);
    const name = this.line.floors[n].name;
    if (!check) return [h("h3", {}, `Checks of ${name}`), h("p", {}, "Nothing is sprayed from this floor, or no line leads here.")];
    return [h("h3", {}, `Checks of ${name}`),
      h("dl", {}, ...CHECKED.flatMap(([key, label, kind]) => {
        const text = typeof check[key] === "number" ? formatWithUnit(check[key], kind) : check[key];
        return text ? [h("dt", {}, label), h("dd", {}, text)] : [];
      })),
      h("ul", {}, ...[...check.standpipe, ...check.fans, ...check.notes].map((t) => h("li", {}, t)))];
  }

  missed(n) {
    const missed = this.chosen.cells.filter((c) => c.floor === n && c.no);
    if (missed.length === 0) return [];
    return [h("h3", {}, `Not reached (${missed.length})`), h("ul", {}, ...missed.map((c) => h("li", {}, `${c.marks}: ${c.no}`)))];
  }

  comparison() {
    return h("table", { class: "spots" }, h("caption", {}, "Machine spots compared, each taken alone"),
        h("thead", {}, h("tr", {}, ...COMPARED.map((c) => h("th", { scope: "col", class: c.kind ? "n" : "" }, heading(c))))),
        h("tbody", {}, ...this.line.choices.map((choice, i) => h("tr", {
          tabindex: 0, "aria-selected": String(i === this.choice), onclick: () => this.take(i),
          onkeydown: (e) => { if (e.key === "Enter" || e.key === " ") { e.preventDefault(); this.take(i); } },
        }, ...COMPARED.map((c) => h("td", { class: c.kind ? "n" : "" }, format(choice[c.key], c.kind)))))));
  }

  lists() {
    const { needs, breaks, hardware, moves, proof } = this.chosen;
    const list = (title, lines) => (lines.length === 0 ? [] : [h("h3", {}, title), h("ul", {}, ...lines.map((l) => h("li", {}, l)))]);
    return [...list("What this spot needs", needs), ...list("What it breaks", breaks),
      ...list("Hardware", hardware.map((i) => `${i.count} × ${i.item}${i.size > 0 ? `, ${formatWithUnit(i.size, "length")}` : ""}`)),
      ...list("Moves in order", moves), ...(proof ? [h("p", {}, proof)] : [])];
  }

  /** Places that an element is sprayed from, the one with most hose first. */
  cellsOf(element) {
    const called = [element.mark, element.name, element.guid].filter(Boolean);
    return this.chosen.cells.filter((c) => c.all.some((m) => called.includes(m)) && (element.workingFloor || "").includes(this.line.floors[c.floor].name))
        .sort((a, b) => (b.flexible || 0) - (a.flexible || 0));
  }

  /** What the card says of an element: the place it is sprayed from and its line. */
  of(element) {
    const [cell] = this.cellsOf(element);
    if (!cell) return [];
    const pair = (label, text) => [h("dt", {}, label), h("dd", {}, text)];
    return [h("h3", {}, `Line, ${this.chosen.label}`), h("dl", {},
        ...pair("Floor", this.line.floors[cell.floor].name), ...pair("Reach", cell.access),
        ...(cell.no ? pair("No line", cell.no) : [...pair("Hose", formatWithUnit(cell.flexible, "length")), ...pair("Pipe", formatWithUnit(cell.pipe, "length")), ...pair("Bends", String(cell.bends))]))];
  }

  /** Plans and checks of all floors with work, for paper. */
  paper() {
    const floors = this.line.floors.map((f, n) => n).filter((n) => this.chosen.cells.some((c) => c.floor === n));
    return [h("h2", {}, `The line: ${this.chosen.label}`), this.comparison(),
      ...floors.map((n) => h("section", { class: "floor" }, h("h3", {}, this.line.floors[n].name),
          h("figure", {}, planOf(this.line, this.chosen, n), h("figcaption", {}, legendWords())), ...this.checks(n), ...this.missed(n))),
      ...this.lists()];
  }
}

function legendWords() {
  return "Dashed: hose; thick: pipe; square: machine; ring: riser; dot: place of work reached, where the whip begins; cross: not reached; shaded: kept free; ringed, and bold: what is chosen and its line.";
}
