import * as THREE from "three";
import { OrbitControls } from "controls";
import { rgb } from "./colour.js";
import { afterBurst } from "./dom.js";
import { edgesOfAll, plainBoxes } from "./geometry.js";
import { pickNear } from "./pick.js";
import { codeOf, EDGE_FRAGMENT, FRAGMENT, VERTEX } from "./shade.js";

/** From so many triangles on, boxes stand for members while the view moves. */
const LIGHT_ABOVE = 150000;
const MOST_EDGES = 1500000;

/** The picture: one mesh, one draw call, drawn only when something changed. */
export class Scene {
  constructor(canvas, geometry, elements) {
    this.canvas = canvas;
    this.parts = geometry.parts;
    this.position = geometry.position;
    this.index = geometry.index;
    this.renderer = new THREE.WebGLRenderer({ canvas, antialias: false, preserveDrawingBuffer: true });
    this.scene = new THREE.Scene();
    this.camera = new THREE.PerspectiveCamera(40, 1, 0.1, 5000);
    this.camera.up.set(0, 0, 1);
    this.side = Math.max(1, Math.ceil(Math.sqrt(elements.length)));
    this.paint = new Uint8Array(4 * this.side * this.side);
    this.palette = new THREE.DataTexture(this.paint, this.side, this.side, THREE.RGBAFormat);
    this.uniforms = {
      palette: { value: this.palette }, side: { value: this.side },
      cut: { value: new THREE.Vector4(0, 0, 0, 1) }, hatched: { value: false }, faces: { value: false },
      paper: { value: new THREE.Vector3(1, 1, 1) }, ink: { value: new THREE.Vector3(0, 0, 0) },
    };
    this.body(geometry);
    this.elements = elements;
    this.geometry = geometry;
    this.line = new THREE.Group();
    this.scene.add(this.line);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.addEventListener("change", () => this.moved());
    this.rest = afterBurst(180, () => { this.moving = false; this.draw(); });
    new ResizeObserver(() => this.resize()).observe(canvas.parentElement);
    this.resize();
    this.fit();
    this.moving = false;
  }

  material(fragment) {
    return new THREE.ShaderMaterial({
      glslVersion: THREE.GLSL3, vertexShader: VERTEX, fragmentShader: fragment, side: THREE.DoubleSide, uniforms: this.uniforms,
      polygonOffset: fragment === FRAGMENT, polygonOffsetFactor: 1, polygonOffsetUnits: 1,
    });
  }

  body(geometry) {
    const mesh = buffer(geometry, geometry.index);
    mesh.setAttribute("state", new THREE.BufferAttribute(geometry.state, 1));
    mesh.computeBoundingBox();
    this.box = geometry.parts.length ? mesh.boundingBox : new THREE.Box3(new THREE.Vector3(), new THREE.Vector3(1, 1, 1));
    this.full = new THREE.Group();
    this.full.add(still(new THREE.Mesh(mesh, this.material(FRAGMENT))));
    this.scene.add(this.full);
  }

  /** What can wait until after the first picture: bodies for use while the view moves, and edges. */
  finish() {
    this.light();
    this.edges();
    this.draw();
  }

  /** Members as boxes, everything else as it is. */
  light() {
    if (this.geometry.triangles < LIGHT_ABOVE) return;
    const isMember = (part) => this.elements[part.element].kind === "member";
    const others = this.parts.filter((p) => !isMember(p));
    const boxes = plainBoxes(this.parts.filter(isMember));
    this.quick = new THREE.Group();
    this.quick.visible = false;
    this.quick.add(still(new THREE.Mesh(buffer(boxes, boxes.index), this.material(FRAGMENT))));
    const size = others.reduce((s, p) => s + p.to - p.from, 0);
    if (size < 3 * LIGHT_ABOVE) {
      const index = new Uint32Array(size);
      let at = 0;
      for (const p of others) { index.set(this.index.subarray(p.from, p.to), at); at += p.to - p.from; }
      this.quick.add(still(new THREE.Mesh(this.shared(index), this.material(FRAGMENT))));
    }
    this.scene.add(this.quick);
  }

  /** Other triangles or lines over the corners of the whole. */
  shared(index) {
    const other = new THREE.BufferGeometry();
    const body = this.full.children[0].geometry;
    for (const name of ["position", "owner", "state"]) other.setAttribute(name, body.getAttribute(name));
    other.setIndex(new THREE.BufferAttribute(index, 1));
    return other;
  }

  /** Edges make shapes readable where colours must stay true. */
  edges() {
    const edges = edgesOfAll(this.parts, MOST_EDGES);
    if (edges) this.full.add(still(new THREE.LineSegments(this.shared(edges), this.material(EDGE_FRAGMENT))));
  }

  /** Colours: one {colour, hatch} for each element, or null for a hidden one. */
  setPaint(of) {
    const known = new Map();
    const read = (colour) => known.get(colour) ?? known.set(colour, rgb(colour)).get(colour);
    for (let i = 0; 4 * i < this.paint.length; i++) {
      const p = of(i);
      if (p) this.paint.set(read(p.colour), 4 * i);
      this.paint[4 * i + 3] = p ? codeOf(p) : 0;
    }
    this.palette.needsUpdate = true;
    this.draw();
  }

  set(values) {
    for (const [name, value] of Object.entries(values)) {
      const uniform = this.uniforms[name];
      if (Array.isArray(value)) uniform.value.set(...value); else uniform.value = value;
    }
    this.draw();
  }

  setTheme(paper, ink) {
    this.renderer.setClearColor(paper);
    this.set({ paper: rgb(paper).map((v) => v / 255), ink: rgb(ink).map((v) => v / 255) });
  }

  /** Bodies of the line, in place of those before. */
  setLine(things) {
    this.line.traverse((o) => o.geometry?.dispose());
    this.line.clear();
    things.forEach((t) => this.line.add(t));
    this.draw();
  }

  resize() {
    const { clientWidth: w, clientHeight: t } = this.canvas.parentElement;
    if (!w || !t) return;
    this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
    this.renderer.setSize(w, t, false);
    this.camera.aspect = w / t;
    this.camera.updateProjectionMatrix();
    this.draw();
  }

  /** Shows a whole box as large as it goes: in perspective its middle is not the middle of its picture. */
  fit(box = this.box) {
    const size = Math.max(1, box.getSize(new THREE.Vector3()).length());
    const from = new THREE.Vector3(-0.55, -0.75, 0.4).normalize();
    const right = new THREE.Vector3(0, 0, 1).cross(from).normalize(), up = from.clone().cross(right);
    const tall = Math.tan((this.camera.fov * Math.PI) / 360), wide = tall * this.camera.aspect;
    const target = box.getCenter(new THREE.Vector3());
    let away = 2 * size;
    for (let step = 0; step < 8; step++) {
      const [low, high] = seen(box, target, from, right, up, away);
      const half = Math.max((high[0] - low[0]) / wide, (high[1] - low[1]) / tall) / 2;
      target.addScaledVector(right, ((low[0] + high[0]) / 2) * away).addScaledVector(up, ((low[1] + high[1]) / 2) * away);
      away = Math.max(1, away * half * 1.06);
    }
    this.controls.target.copy(target);
    this.camera.position.copy(target).addScaledVector(from, away);
    this.camera.near = size / 2000;
    this.camera.far = size * 20;
    this.camera.updateProjectionMatrix();
    this.controls.update();
    this.draw();
  }

  /** The box of some elements, empty where none is drawn. */
  boxOf(elements) {
    const wanted = new Set(elements), box = new THREE.Box3();
    for (const part of this.parts) {
      if (!wanted.has(part.element)) continue;
      box.expandByPoint(new THREE.Vector3(...part.box.slice(0, 3))).expandByPoint(new THREE.Vector3(...part.box.slice(3)));
    }
    return box;
  }

  /** Where the middle of an element is seen, in the window. */
  onScreen(element) {
    this.camera.updateMatrixWorld();
    const middle = this.boxOf([element]).getCenter(new THREE.Vector3()).project(this.camera);
    const r = this.canvas.getBoundingClientRect();
    return [r.left + ((middle.x + 1) / 2) * r.width, r.top + ((1 - middle.y) / 2) * r.height];
  }

  /** Turns to some elements, keeping the direction of view. */
  lookAt(elements) {
    const box = this.boxOf(elements);
    if (box.isEmpty()) return;
    const centre = box.getCenter(new THREE.Vector3());
    const away = this.camera.position.clone().sub(this.controls.target).normalize();
    const distance = Math.max(3, 2.5 * box.getSize(new THREE.Vector3()).length());
    this.controls.target.copy(centre);
    this.camera.position.copy(centre).addScaledVector(away, distance);
    this.controls.update();
  }

  get viewpoint() {
    return [...this.camera.position.toArray(), ...this.controls.target.toArray()].map((v) => v.toFixed(2)).join(",");
  }

  set viewpoint(text) {
    const v = text.split(",").map(Number);
    if (v.length !== 6 || v.some((n) => !Number.isFinite(n))) return;
    this.camera.position.set(v[0], v[1], v[2]);
    this.controls.target.set(v[3], v[4], v[5]);
    this.controls.update();
  }

  /** Turns about the target by angles, or moves nearer by a factor. */
  turn(about, up, nearer) {
    const offset = this.camera.position.clone().sub(this.controls.target).multiplyScalar(nearer);
    const flat = Math.hypot(offset.x, offset.y), r = offset.length();
    const a = Math.atan2(offset.y, offset.x) + about, t = Math.min(1.5, Math.max(-1.5, Math.atan2(offset.z, flat) + up));
    offset.set(r * Math.cos(t) * Math.cos(a), r * Math.cos(t) * Math.sin(a), r * Math.sin(t));
    this.camera.position.copy(this.controls.target).add(offset);
    this.controls.update();
    this.draw();
  }

  /** Moves along the picture, by parts of the distance looked over. */
  pan(right, up) {
    const offset = this.camera.position.clone().sub(this.controls.target), far = offset.length();
    const across = new THREE.Vector3(0, 0, 1).cross(offset).normalize(), along = offset.clone().cross(across).normalize();
    const step = across.multiplyScalar(right * far).addScaledVector(along, up * far);
    this.camera.position.add(step);
    this.controls.target.add(step);
    this.controls.update();
    this.draw();
  }

  moved() {
    this.moving = true;
    this.rest?.();
    this.draw();
  }

  draw() {
    if (this.pending) return;
    this.pending = true;
    requestAnimationFrame(() => { this.pending = false; this.render(); });
  }

  /** Draws in full, at once. */
  drawNow() {
    this.moving = false;
    this.render();
  }

  render() {
    const light = this.moving && this.quick !== undefined;
    this.full.visible = !light;
    if (this.quick) this.quick.visible = light;
    this.renderer.render(this.scene, this.camera);
  }

  /** The element at a point of the window, or nearest to it within a reach in pixels; or -1. */
  pick(clientX, clientY, reach = 0) {
    this.camera.updateMatrixWorld(); // it may have turned since the last picture
    const { left, top, width, height } = this.canvas.getBoundingClientRect();
    const rayAt = (x, y) => {
      const caster = new THREE.Raycaster();
      caster.setFromCamera(new THREE.Vector2(((x - left) / width) * 2 - 1, 1 - ((y - top) / height) * 2), this.camera);
      return caster.ray;
    };
    return pickNear(this, rayAt, clientX, clientY, reach);
  }
}

/** Least and greatest slope at which the corners of a box are seen, to the right and up. */
function seen(box, target, from, right, up, away) {
  const low = [Infinity, Infinity], high = [-Infinity, -Infinity];
  for (let i = 0; i < 8; i++) {
    const p = new THREE.Vector3(i & 1 ? box.max.x : box.min.x, i & 2 ? box.max.y : box.min.y, i & 4 ? box.max.z : box.min.z).sub(target);
    const deep = Math.max(away / 10, away - p.dot(from));
    [p.dot(right) / deep, p.dot(up) / deep].forEach((v, k) => { low[k] = Math.min(low[k], v); high[k] = Math.max(high[k], v); });
  }
  return [low, high];
}

function buffer({ position, owner }, index) {
  const geometry = new THREE.BufferGeometry();
  geometry.setAttribute("position", new THREE.BufferAttribute(position, 3));
  geometry.setAttribute("owner", new THREE.BufferAttribute(owner, 1));
  geometry.setIndex(new THREE.BufferAttribute(index, 1));
  return geometry;
}

function still(thing) {
  thing.frustumCulled = false;
  return thing;
}
