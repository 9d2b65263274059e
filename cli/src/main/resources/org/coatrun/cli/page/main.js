import { afterPaint, byId, bytesOf, h, known } from "./dom.js";
import { scaleFor } from "./colour.js";
import { inflated, readGeometry } from "./geometry.js";
import { setSystem } from "./quantity.js";
import { linkTo, putInto, readState, stateOf } from "./state.js";
import { Model } from "./model.js";
import { showCard } from "./card.js";
import { showFilters } from "./filters.js";
import { showLegend } from "./legend.js";
import { layOutPaper } from "./paper.js";
import { Scene } from "./scene.js";
import { Lists } from "./lists.js";
import { LinePanel } from "./line.js";
import { lineBodies, lineLegend } from "./line-bodies.js";
import { copyText, saveFile } from "./hand-out.js";
import { wireCanvas } from "./canvas.js";

/** Wires model, view, lists and controls together. */
class Page {
  constructor(data) {
    this.data = data;
    this.model = new Model(data);
    this.theme = "light";
    this.scene = null;
    this.line = data.line?.choices?.length ? new LinePanel(data.line, () => this.showLine()) : null;
    const line = this.line ? [{ key: "line", label: "Line", show: (host) => this.line.show(host) }] : [];
    this.lists = new Lists(this.model, line, { onChoose: (row, add) => this.chooseRow(row, add) });
    this.model.listen((what) => this.follow(what));
  }

  get column() {
    return this.model.scales.find((c) => c.key === byId("colour").value) || this.model.scales[0];
  }

  get table() {
    return this.lists.table;
  }

  follow(what) {
    if (what === "shown") this.lists.refilter();
    if (this.line && what === "chosen") this.line.turnTo(this.model.last);
    if (this.line && (what === "shown" || what === "chosen")) this.drawLine();
    this.showControls();
    this.repaint();
    if (what === "chosen") {
      this.card();
      this.lists.follow(this.model.last, true);
    }
  }

  card() {
    showCard(byId("detail"), this.model, {
      onChoose: (e) => this.look(e), onFinding: () => this.lists.open("findings"), more: (e) => (this.line ? this.line.of(e) : []),
    });
    byId("detail").scrollTop = 0;
  }

  repaint() {
    const { column, model } = this;
    if (!column) return;
    const scale = scaleFor(column, model.elements, this.theme);
    showLegend(byId("legend"), column, scale, {
      hatched: byId("hatch").checked, faces: byId("faces").checked, line: this.lineIsShown ? lineLegend(this.line.chosen, this.line.own, this.theme) : [], notes: model.rest.length > 0 ? ["Counts are of those shown one by one."] : [],
      filtered: model.filters.get(column.key), onFilter: (value) => model.filter(column.key, value),
    });
    const chosen = new Set(model.chosen);
    this.scene?.setPaint((n) => {
      const element = model.elements[n];
      return element && model.visible(element) ? { ...scale.of(element), chosen: chosen.has(element), through: model.through(element) } : null;
    });
  }

  get lineIsShown() {
    return this.line !== null && byId("line-shown").checked;
  }

  showLine() {
    this.drawLine();
    this.repaint();
    if (this.model.last) this.card();
  }

  /** The line on the floors of the storeys that are shown, and apart from it that to what was chosen last. */
  drawLine() {
    const { data, model, scene } = this;
    this.line.follow(model.last);
    const level = (n) => { const at = data.storeys.indexOf(data.line.floors[n].name); return at < 0 ? null : at; };
    scene?.setLine(this.lineIsShown ? lineBodies(data.line, this.line.chosen, this.line.own, this.theme, (n) => model.inStorey({ level: level(n) })) : []);
  }

  /** Chooses an element, shows it and turns to it. */
  look(element) {
    this.model.reveal(element);
    this.scene?.lookAt([element.n]);
  }

  chooseRow(row, add) {
    if (row.kind) {
      if (add || this.model.several) this.model.choose(row, true);
      else this.look(row);
    } else {
      this.lists.finding = row;
      if (row.element !== null && row.element !== undefined) this.look(this.model.elements[row.element]);
      else this.table?.show();
    }
  }

  showControls() {
    const { model } = this;
    byId("storey").value = model.top;
    byId("only-storey").checked = model.only;
    const all = model.top === this.data.storeys.length && !model.only;
    byId("storey-name").textContent = all ? "all" : this.data.storeys[model.top - 1] ?? "none";
    byId("surroundings").value = model.surroundings;
    byId("left-out").checked = model.leftOut;
    if (document.activeElement !== byId("search")) byId("search").value = model.query;
    byId("isolate").setAttribute("aria-pressed", String(model.isolated));
    byId("several").setAttribute("aria-pressed", String(model.several));
    byId("clear").disabled = model.query === "" && model.filters.size === 0 && all && model.surroundings !== "off" && model.leftOut && !model.isolated;
    showFilters(byId("filters"), model);
    byId("filter-name").textContent = model.filters.size === 0 ? "Filters" : `Filters (${model.filters.size} set)`;
  }

  setTheme(theme) {
    this.theme = theme;
    document.documentElement.dataset.theme = theme;
    byId("theme").textContent = theme === "dark" ? "Light" : "Dark";
    this.scene?.setTheme(theme === "dark" ? "#1c2126" : "#ffffff", theme === "dark" ? "#eceae4" : "#1d2228");
    if (this.line) this.showLine(); else this.repaint();
  }

  applyCut() {
    const axis = byId("cut-axis").value;
    byId("cut").disabled = axis === "";
    if (!this.scene) return;
    if (axis === "") { this.scene.set({ cut: [0, 0, 0, 1] }); return; }
    const low = this.scene.box.min[axis], high = this.scene.box.max[axis];
    const normal = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] }[axis];
    this.scene.set({ cut: [...normal, low + ((high - low) * Number(byId("cut").value)) / 1000 + 1e-4] });
  }

  /** What a link carries. */
  get saved() {
    const axis = byId("cut-axis").value;
    return stateOf(this.model, {
      colour: byId("colour").value, cut: axis && `${axis},${byId("cut").value}`, faces: byId("faces").checked && 1,
      hatch: byId("hatch").checked && 1, units: byId("units").value, theme: this.theme, list: this.lists.key,
      spot: this.line && this.line.choice, floor: this.line && this.line.floor, line: !byId("line-shown").checked && "off",
    }, this.scene);
  }

  restore(saved) {
    putInto(this.model, saved);
    if (this.model.scales.some((c) => c.key === saved.colour)) byId("colour").value = saved.colour;
    const [axis, at] = (saved.cut || "").split(",");
    byId("cut-axis").value = ["x", "y", "z"].includes(axis) ? axis : "";
    byId("cut").value = at ?? 1000;
    byId("faces").checked = saved.faces === "1";
    byId("hatch").checked = saved.hatch === "1";
    if (saved.units === "us" || saved.units === "si") byId("units").value = saved.units;
    setSystem(byId("units").value);
    byId("line-shown").checked = saved.line !== "off";
    this.line?.take(Number(saved.spot) || 0, saved.floor === undefined ? undefined : Number(saved.floor) || 0);
    this.scene?.set({ faces: byId("faces").checked, hatched: byId("hatch").checked });
    this.applyCut();
    this.setTheme(saved.theme === "dark" || (!saved.theme && matchMedia("(prefers-color-scheme: dark)").matches) ? "dark" : "light");
    if (saved.view) { if (this.scene) this.scene.viewpoint = saved.view; } else if (this.model.last) this.scene?.lookAt(this.model.chosen.map((e) => e.n));
  }

  /** Brings lists and card up to what the view shows. */
  tell(list) {
    this.lists.open(list);
    this.showControls();
    this.card();
    if (this.model.last) this.lists.follow(this.model.last, true);
  }

  wire() {
    const { model } = this;
    const on = (id, event, action) => byId(id).addEventListener(event, action);
    const shown = (id, event, put) => on(id, event, (e) => { put(e.target); model.changed(); });
    shown("storey", "input", (e) => { model.top = Number(e.value); });
    shown("only-storey", "change", (e) => { model.only = e.checked; });
    shown("surroundings", "change", (e) => { model.surroundings = e.value; });
    shown("left-out", "change", (e) => { model.leftOut = e.checked; });
    shown("search", "input", (e) => { model.query = e.value.trim(); });
    shown("isolate", "click", () => { model.isolated = !model.isolated; });
    shown("several", "click", () => { model.several = !model.several; });
    shown("clear", "click", () => { model.clear(); model.isolated = false; });
    on("colour", "change", () => this.repaint());
    on("cut-axis", "change", () => this.applyCut());
    on("cut", "input", () => this.applyCut());
    on("faces", "change", (e) => { this.scene?.set({ faces: e.target.checked }); this.repaint(); });
    on("hatch", "change", (e) => { this.scene?.set({ hatched: e.target.checked }); this.repaint(); });
    on("line-shown", "change", () => this.showLine());
    on("fit", "click", () => this.scene?.fit());
    on("units", "change", (e) => { setSystem(e.target.value); this.tell(this.lists.key); this.repaint(); });
    on("theme", "click", () => this.setTheme(this.theme === "dark" ? "light" : "dark"));
    on("link", "click", () => { history.replaceState(null, "", linkTo(this.saved)); this.say(copyText(location.href)); });
    on("print", "click", () => print());
    on("csv", "click", () => this.table && saveFile(`${this.lists.key}.csv`, this.table.csv(), "text/csv"));
    on("copy", "click", () => this.table && this.say(copyText(this.table.text())));
    on("basis-jump", "click", () => { this.lists.open("basis"); byId("list").focus(); byId("list").scrollIntoView({ block: "nearest" }); });
    addEventListener("hashchange", () => { const saved = readState(); this.restore(saved); this.tell(saved.list); });
    addEventListener("beforeprint", () => this.beforePrint());
    addEventListener("afterprint", () => this.afterPrint());
    wireCanvas(byId("view"), this);
  }

  async say(promise) {
    byId("count").textContent = await promise;
  }

  /** On paper the picture is light and hatched, whatever the screen shows. */
  beforePrint() {
    this.before = { theme: this.theme, hatch: byId("hatch").checked };
    byId("hatch").checked = true;
    this.scene?.set({ hatched: true });
    this.setTheme("light");
    this.scene?.drawNow();
    layOutPaper(this.model, this.scene, this.line && (() => this.line.paper()));
  }

  afterPrint() {
    byId("hatch").checked = this.before.hatch;
    this.scene?.set({ hatched: this.before.hatch });
    this.setTheme(this.before.theme);
  }

  heading() {
    const { data, model } = this;
    byId("title").textContent = data.title;
    byId("summary").textContent = data.summary;
    byId("caution").textContent = data.caution;
    byId("units").value = data.units;
    byId("colour").replaceChildren(...model.scales.map((c) => h("option", { value: c.key }, c.label)));
    const tells = (c) => new Set(model.steel.map((e) => e[c.key]).filter(known)).size > 1;
    byId("colour").value = (model.scales.find((c) => c.key === "thickness") ?? model.scales.find(tells) ?? model.scales[0])?.key;
    byId("line-shown").closest("label").hidden = !this.line;
    byId("storey").max = data.storeys.length;
    const [first, ...more] = data.lacks;
    byId("lacks").hidden = !first;
    byId("lacks").replaceChildren(h("summary", {}, first), h("ul", {}, ...more.map((l) => h("li", {}, l))));
  }

  /** The picture comes first, the lists once it is in sight, and what only helps to move it last. */
  async start(geometry) {
    this.heading();
    setSystem(this.data.units);
    this.wire();
    try {
      this.geometry = readGeometry(await geometry);
      this.scene = new Scene(byId("view"), this.geometry, this.model.elements);
    } catch (problem) {
      byId("view").hidden = true;
      byId("legend").hidden = true;
      byId("no-view").hidden = false;
      byId("no-view").textContent = `This browser shows no three-dimensional view (${problem.message}). The lists are complete.`;
    }
    const saved = readState();
    this.restore(saved);
    this.scene?.drawNow();
    performance.mark("first picture");
    await afterPaint();
    this.tell(saved.list);
    document.documentElement.dataset.ready = "true";
    setTimeout(() => { this.scene?.finish(); document.documentElement.dataset.edges = "true"; }, 0);
  }
}

async function unpack(text) {
  const stream = new Blob([bytesOf(text)]).stream().pipeThrough(new DecompressionStream("gzip"));
  return JSON.parse(await new Response(stream).text());
}

const geometry = inflated(byId("geometry").textContent);
unpack(byId("data").textContent).then((data) => {
  window.coatrun = new Page(data);
  return window.coatrun.start(geometry);
});
