import { byId, h } from "./dom.js";
import { scaleFor } from "./colour.js";
import { readGeometry } from "./geometry.js";
import { setSystem } from "./quantity.js";
import { linkTo, readState } from "./state.js";
import { showDetail } from "./detail.js";
import { showLegend } from "./legend.js";
import { Scene } from "./scene.js";
import { Table } from "./table.js";

const data = JSON.parse(byId("data").textContent);
const elements = data.elements;
elements.forEach((e, n) => { e.n = n; });
const scales = data.columns.filter((c) => c.scale && elements.some((e) => e[c.key] !== null && e[c.key] !== undefined && e[c.key] !== ""));
const state = { chosen: null, isolated: false, theme: "light", tab: null, query: "" };
let scene = null;
let table = null;
let geometry = null;

const storeyInput = byId("storey");
const cutAxis = byId("cut-axis");
const cut = byId("cut");

function inStorey(element) {
  const top = Number(storeyInput.value);
  if (element.level === null || element.level === undefined) return top === data.storeys.length;
  return byId("only-storey").checked ? element.level === top - 1 || top === data.storeys.length : element.level < top;
}

function matches(element) {
  const q = state.query.toLowerCase();
  return q === "" || ["mark", "section", "name", "guid", "type"].some((k) => String(element[k] ?? "").toLowerCase().includes(q));
}

function visible(element) {
  if (!inStorey(element)) return false;
  if (element.kind !== "member" && !byId("concrete").checked) return false;
  if (element.kind === "member" && !matches(element)) return false;
  return !state.isolated || element === state.chosen || (state.query !== "" && element.kind === "member");
}

function repaint() {
  const column = scales.find((c) => c.key === byId("colour").value) || scales[0];
  if (!column) return;
  const scale = scaleFor(column, elements, state.theme);
  showLegend(byId("legend"), column, scale, data.leftOut || []);
  scene?.setPaint((n) => {
    const element = elements[n];
    return element && visible(element) ? scale.of(element) : null;
  });
  scene?.set({ selected: state.chosen ? state.chosen.n : -1 });
}

function choose(element, look = false) {
  state.chosen = element;
  showDetail(byId("detail"), element, data, (e) => choose(e, true));
  if (table && element && table.all.includes(element)) table.choose(element);
  if (look && element) scene?.lookAt(element.n);
  repaint();
}

/* ---- lists ---- */

const LISTS = [
  { key: "members", label: "Members", columns: data.columns.filter((c) => c.members), rows: elements.filter((e) => e.kind === "member") },
  { key: "decks", label: "Decks", columns: data.columns.filter((c) => c.decks), rows: elements.filter((e) => e.kind === "deck") },
  { key: "findings", label: "Findings", columns: data.findingColumns, rows: data.findings },
  ...(data.tables || []),
  { key: "plans", label: "Plans", plans: data.plans || [] },
  { key: "basis", label: "Basis and cautions", prose: data.basis },
].filter((l) => (l.rows ? l.rows.length > 0 : l.plans ? l.plans.length > 0 : true));

function openList(key) {
  const list = LISTS.find((l) => l.key === key) || LISTS[0];
  state.tab = list.key;
  byId("tabs").replaceChildren(...LISTS.map((l) => h("button", {
    type: "button", role: "tab", id: `tab-${l.key}`, "aria-controls": "list", "aria-selected": l === list ? "true" : "false",
    tabindex: l === list ? 0 : -1, onclick: () => openList(l.key), onkeydown: (e) => alongTabs(e, l),
  }, l.rows ? `${l.label} (${l.rows.length})` : l.label)));
  byId("list").setAttribute("aria-labelledby", `tab-${list.key}`);
  table = null;
  if (list.rows) openTable(list); else if (list.plans) openPlans(list); else openProse(list);
}

function alongTabs(event, list) {
  const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
  if (!step) return;
  const next = LISTS[(LISTS.indexOf(list) + step + LISTS.length) % LISTS.length];
  openList(next.key);
  byId(`tab-${next.key}`).focus();
}

function openTable(list) {
  table = new Table(byId("list"), {
    columns: list.columns, rows: list.rows,
    onChoose: (row) => {
      if (row.kind) choose(row, true);
      else if (row.element !== null && row.element !== undefined) choose(elements[row.element], true);
    },
  });
  refilter();
}

function refilter() {
  if (!table) { byId("count").textContent = ""; return; }
  table.filter((row) => (row.kind ? matches(row) && inStorey(row)
      : state.query === "" || Object.values(row).some((v) => String(v ?? "").toLowerCase().includes(state.query.toLowerCase()))));
  byId("count").textContent = `${table.rows.length} of ${table.all.length} rows`;
}

function openPlans(list) {
  byId("list").replaceChildren(h("div", { class: "plans" }, ...list.plans.map((p) =>
    h("figure", {}, h("img", { src: `data:image/svg+xml;base64,${p.svg}`, alt: p.label }), h("figcaption", {}, p.label)))));
  byId("count").textContent = "";
}

function openProse(list) {
  byId("list").replaceChildren(h("div", { class: "prose" }, ...list.prose.flatMap((part) =>
    [h("h2", {}, part.title), h("ul", {}, ...part.lines.map((l) => h("li", {}, l)))])));
  byId("count").textContent = "";
}

/* ---- view ---- */

function applyCut() {
  if (!scene) return;
  const axis = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] }[cutAxis.value];
  if (!axis) { scene.set({ cut: [0, 0, 0, 1] }); return; }
  const low = scene.box.min[cutAxis.value], high = scene.box.max[cutAxis.value];
  scene.set({ cut: [...axis, low + ((high - low) * Number(cut.value)) / 1000 + 1e-4] });
}

function setTheme(theme) {
  state.theme = theme;
  document.documentElement.dataset.theme = theme;
  byId("theme").textContent = theme === "dark" ? "Light" : "Dark";
  scene?.setBackground(theme === "dark" ? "#1c2126" : "#ffffff");
  repaint();
}

function nameStorey() {
  const top = Number(storeyInput.value);
  byId("storey-name").textContent = top === data.storeys.length && !byId("only-storey").checked ? "all" : data.storeys[top - 1] ?? "none";
}

function pageState() {
  return {
    element: state.chosen?.guid || state.chosen?.step, colour: byId("colour").value, storey: storeyInput.value,
    only: byId("only-storey").checked ? 1 : "", cut: cutAxis.value ? `${cutAxis.value},${cut.value}` : "", search: state.query,
    units: byId("units").value, theme: state.theme, view: scene?.viewpoint,
  };
}

function restore(saved) {
  if (saved.colour && scales.some((c) => c.key === saved.colour)) byId("colour").value = saved.colour;
  if (saved.storey) storeyInput.value = saved.storey;
  byId("only-storey").checked = saved.only === "1";
  if (saved.cut) { const [axis, at] = saved.cut.split(","); cutAxis.value = axis; cut.value = at; }
  if (saved.search) { state.query = saved.search; byId("search").value = saved.search; }
  if (saved.units === "us" || saved.units === "si") byId("units").value = saved.units;
  setSystem(byId("units").value);
  nameStorey();
  openList(state.tab);
  applyCut();
  setTheme(saved.theme === "dark" || (!saved.theme && matchMedia("(prefers-color-scheme: dark)").matches) ? "dark" : "light");
  if (saved.element) choose(elements.find((e) => e.guid === saved.element || String(e.step) === saved.element) || null, true);
  if (saved.view && scene) scene.viewpoint = saved.view;
}

function download(name, text, type) {
  const link = h("a", { href: URL.createObjectURL(new Blob([text], { type })), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

async function copyText(text) {
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    const area = h("textarea", {});
    area.value = text;
    document.body.append(area);
    area.select();
    document.execCommand("copy");
    area.remove();
  }
  byId("count").textContent = "copied";
}

function wire() {
  const onView = () => { nameStorey(); refilter(); repaint(); };
  storeyInput.addEventListener("input", onView);
  byId("only-storey").addEventListener("change", onView);
  byId("concrete").addEventListener("change", repaint);
  byId("colour").addEventListener("change", repaint);
  cutAxis.addEventListener("change", applyCut);
  cut.addEventListener("input", applyCut);
  byId("faces").addEventListener("change", (e) => scene?.set({ faces: e.target.checked }));
  byId("hatch").addEventListener("change", (e) => scene?.set({ hatched: e.target.checked }));
  byId("isolate").addEventListener("click", (e) => {
    state.isolated = !state.isolated;
    e.target.setAttribute("aria-pressed", String(state.isolated));
    repaint();
  });
  byId("fit").addEventListener("click", () => scene?.fit());
  byId("search").addEventListener("input", (e) => { state.query = e.target.value.trim(); refilter(); repaint(); });
  byId("units").addEventListener("change", (e) => { setSystem(e.target.value); openList(state.tab); choose(state.chosen); });
  byId("theme").addEventListener("click", () => setTheme(state.theme === "dark" ? "light" : "dark"));
  byId("link").addEventListener("click", () => { history.replaceState(null, "", linkTo(pageState())); copyText(location.href); });
  byId("print").addEventListener("click", () => print());
  byId("csv").addEventListener("click", () => table && download(`${state.tab}.csv`, table.csv(), "text/csv"));
  byId("copy").addEventListener("click", () => table && copyText(table.text()));
  byId("basis-jump").addEventListener("click", () => { openList("basis"); byId("list").focus(); byId("tabs").scrollIntoView(); });
  addEventListener("hashchange", () => restore(readState()));
  addEventListener("beforeprint", () => { scene?.drawNow(); table?.show(true); });
  addEventListener("afterprint", () => table?.show());
  wireCanvas(byId("view"));
}

function wireCanvas(canvas) {
  let down = null;
  canvas.addEventListener("pointerdown", (e) => { down = [e.clientX, e.clientY]; });
  canvas.addEventListener("pointerup", (e) => {
    if (!scene || !down || Math.hypot(e.clientX - down[0], e.clientY - down[1]) > 4) return;
    const n = scene.pick(e.clientX, e.clientY);
    if (n >= 0 && !(table && table.all.includes(elements[n]))) openList(elements[n].kind === "deck" ? "decks" : "members");
    choose(n < 0 ? null : elements[n]);
  });
  canvas.addEventListener("keydown", (e) => scene && keys(e));
}

function keys(event) {
  const turn = { ArrowLeft: [0.1, 0], ArrowRight: [-0.1, 0], ArrowUp: [0, -0.1], ArrowDown: [0, 0.1] }[event.key];
  const zoom = { "+": 0.85, "=": 0.85, "-": 1.18 }[event.key];
  if (!turn && !zoom) return;
  event.preventDefault();
  const offset = scene.camera.position.clone().sub(scene.controls.target);
  if (zoom) offset.multiplyScalar(zoom);
  if (turn) {
    const flat = Math.hypot(offset.x, offset.y), r = offset.length();
    const a = Math.atan2(offset.y, offset.x) + turn[0], t = Math.min(1.5, Math.max(-1.5, Math.atan2(offset.z, flat) - turn[1]));
    offset.set(r * Math.cos(t) * Math.cos(a), r * Math.cos(t) * Math.sin(a), r * Math.sin(t));
  }
  scene.camera.position.copy(scene.controls.target).add(offset);
  scene.controls.update();
  scene.draw();
}

async function start() {
  byId("title").textContent = data.title;
  byId("summary").textContent = data.summary;
  byId("caution").textContent = data.caution;
  byId("units").value = data.units;
  byId("colour").replaceChildren(...scales.map((c) => h("option", { value: c.key }, c.label)));
  storeyInput.max = data.storeys.length;
  storeyInput.min = 1;
  storeyInput.value = data.storeys.length;
  nameStorey();
  setSystem(data.units);
  openList("members");
  choose(null);
  wire();
  try {
    geometry = await readGeometry(byId("geometry").textContent);
    scene = new Scene(byId("view"), geometry, elements.length);
    scene.setLines(data.lines || []);
  } catch (problem) {
    byId("view").hidden = true;
    byId("no-view").hidden = false;
    byId("no-view").textContent = `This browser shows no three-dimensional view (${problem.message}). The tables below are complete.`;
  }
  restore(readState());
  applyCut();
  document.documentElement.dataset.ready = "true";
  window.coatrun = { data, geometry, get scene() { return scene; }, get table() { return table; }, choose: (n) => choose(elements[n], true) };
}

start();
