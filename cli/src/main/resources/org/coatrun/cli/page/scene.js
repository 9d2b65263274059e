import * as THREE from "three";
import { OrbitControls } from "controls";
import { rgb } from "./colour.js";

const VERTEX = `
in float owner; in float state;
uniform sampler2D palette; uniform float side;
flat out vec4 paint; flat out float face; flat out float chosen; out vec3 place; out vec3 eye;
uniform float selected;
void main() {
  float row = floor(owner / side);
  paint = texelFetch(palette, ivec2(int(owner - row * side), int(row)), 0);
  face = state; chosen = abs(owner - selected) < 0.5 ? 1.0 : 0.0;
  place = position;
  vec4 seen = modelViewMatrix * vec4(position, 1.0);
  eye = seen.xyz;
  gl_Position = paint.a < 0.5 / 255.0 ? vec4(2.0, 2.0, 2.0, 1.0) : projectionMatrix * seen;
}`;
const FRAGMENT = `
precision highp float;
flat in vec4 paint; flat in float face; flat in float chosen; in vec3 place; in vec3 eye; out vec4 colour;
uniform vec4 cut; uniform bool hatched; uniform bool faces; uniform vec3 paper;
void main() {
  if (dot(cut.xyz, place) > cut.w) discard;
  vec3 n = normalize(cross(dFdx(eye), dFdy(eye)));
  float light = 0.85 + 0.15 * abs(dot(n, normalize(vec3(0.3, 0.5, 0.8))));
  vec3 c = paint.rgb;
  if (hatched) {
    float h = floor(paint.a * 255.0 / 16.0 + 0.5);
    float t = h < 1.5 ? 9.0 : mod(h, 4.0) < 0.5 ? gl_FragCoord.x : mod(h, 4.0) < 1.5 ? gl_FragCoord.y
      : mod(h, 4.0) < 2.5 ? gl_FragCoord.x + gl_FragCoord.y : gl_FragCoord.x - gl_FragCoord.y;
    if (h > 0.5 && mod(t, h > 4.5 ? 6.0 : 11.0) < 1.5) c = mix(c, paper, 0.6);
  }
  if (faces && face > 0.5) {
    c = mix(c, paper, 0.75);
    if (mod(gl_FragCoord.x + gl_FragCoord.y, 8.0) < 1.5) c *= 0.6;
  }
  if (chosen > 0.5) c = mix(c, vec3(0.95, 0.1, 0.35), 0.75);
  colour = vec4(c * light, 1.0);
}`;

/** The picture: one mesh, one draw call, drawn only when something changed. */
export class Scene {
  constructor(canvas, geometry, elementCount) {
    this.canvas = canvas;
    this.parts = geometry.parts;
    this.position = geometry.position;
    this.renderer = new THREE.WebGLRenderer({ canvas, antialias: false, preserveDrawingBuffer: true });
    this.scene = new THREE.Scene();
    this.camera = new THREE.PerspectiveCamera(40, 1, 0.1, 5000);
    this.camera.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.addEventListener("change", () => this.draw());
    this.side = Math.max(1, Math.ceil(Math.sqrt(elementCount)));
    this.paint = new Uint8Array(4 * this.side * this.side);
    this.palette = new THREE.DataTexture(this.paint, this.side, this.side, THREE.RGBAFormat);
    this.material = new THREE.ShaderMaterial({
      glslVersion: THREE.GLSL3, vertexShader: VERTEX, fragmentShader: FRAGMENT, side: THREE.DoubleSide,
      uniforms: {
        palette: { value: this.palette }, side: { value: this.side }, selected: { value: -1 },
        cut: { value: new THREE.Vector4(0, 0, 0, 1) }, hatched: { value: false }, faces: { value: false },
        paper: { value: new THREE.Vector3(1, 1, 1) },
      },
    });
    const mesh = new THREE.BufferGeometry();
    mesh.setAttribute("position", new THREE.BufferAttribute(geometry.position, 3));
    mesh.setAttribute("owner", new THREE.BufferAttribute(geometry.owner, 1));
    mesh.setAttribute("state", new THREE.BufferAttribute(geometry.state, 1));
    mesh.computeBoundingBox();
    this.box = mesh.boundingBox;
    const body = new THREE.Mesh(mesh, this.material);
    body.frustumCulled = false;
    this.scene.add(body);
    this.lines = new THREE.Group();
    this.scene.add(this.lines);
    new ResizeObserver(() => this.resize()).observe(canvas.parentElement);
    this.resize();
    this.fit();
  }

  /** Colours: one {colour, hatch} for each element, or null for a hidden one. */
  setPaint(of) {
    for (let i = 0; 4 * i < this.paint.length; i++) {
      const p = of(i);
      const [r, g, b] = p ? rgb(p.colour) : [0, 0, 0];
      this.paint.set([r, g, b, p ? 1 + 16 * p.hatch : 0], 4 * i);
    }
    this.palette.needsUpdate = true;
    this.draw();
  }

  set(values) {
    for (const [name, value] of Object.entries(values)) {
      const uniform = this.material.uniforms[name];
      if (Array.isArray(value)) uniform.value.set(...value); else uniform.value = value;
    }
    this.draw();
  }

  setBackground(hex) {
    this.renderer.setClearColor(hex);
    this.set({ paper: rgb(hex).map((v) => v / 255) });
  }

  /** Hose and pipe: polylines [{points: [[x,y,z]…], colour}]. */
  setLines(lines) {
    this.lines.clear();
    for (const line of lines) {
      const points = line.points.map((p) => new THREE.Vector3(...p));
      const geometry = new THREE.BufferGeometry().setFromPoints(points);
      this.lines.add(new THREE.Line(geometry, new THREE.LineBasicMaterial({ color: line.colour })));
    }
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

  fit(box = this.box) {
    const centre = box.getCenter(new THREE.Vector3());
    const size = Math.max(1, box.getSize(new THREE.Vector3()).length());
    const from = new THREE.Vector3(-0.55, -0.75, 0.45).normalize().multiplyScalar(size * 1.15);
    this.controls.target.copy(centre);
    this.camera.position.copy(centre).add(from);
    this.camera.near = size / 2000;
    this.camera.far = size * 20;
    this.camera.updateProjectionMatrix();
    this.controls.update();
    this.draw();
  }

  /** Where the middle of an element's first part is seen, in the window. */
  onScreen(element) {
    const { box } = this.parts.find((part) => part.element === element);
    this.camera.updateMatrixWorld();
    const middle = new THREE.Vector3(...[0, 1, 2].map((i) => (box[i] + box[3 + i]) / 2)).project(this.camera);
    const r = this.canvas.getBoundingClientRect();
    return [r.left + ((middle.x + 1) / 2) * r.width, r.top + ((1 - middle.y) / 2) * r.height];
  }

  /** Turns to one element, keeping the direction of view. */
  lookAt(element) {
    const box = new THREE.Box3();
    for (const part of this.parts) {
      if (part.element !== element) continue;
      box.expandByPoint(new THREE.Vector3(...part.box.slice(0, 3))).expandByPoint(new THREE.Vector3(...part.box.slice(3)));
    }
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

  draw() {
    if (this.pending) return;
    this.pending = true;
    requestAnimationFrame(() => {
      this.pending = false;
      this.renderer.render(this.scene, this.camera);
    });
  }

  drawNow() {
    this.renderer.render(this.scene, this.camera);
  }

  /** The element under a point of the canvas, or -1: boxes first, then triangles; obeys the cut. */
  pick(clientX, clientY) {
    const r = this.canvas.getBoundingClientRect();
    const ray = new THREE.Raycaster();
    ray.setFromCamera(new THREE.Vector2(((clientX - r.left) / r.width) * 2 - 1, 1 - ((clientY - r.top) / r.height) * 2), this.camera);
    const cut = this.material.uniforms.cut.value;
    const [a, b, c, hit] = [0, 1, 2, 3].map(() => new THREE.Vector3());
    const box = new THREE.Box3();
    let best = Infinity, found = -1;
    for (const part of this.parts) {
      if (this.paint[4 * part.element + 3] === 0) continue;
      box.min.fromArray(part.box, 0); box.max.fromArray(part.box, 3);
      if (!ray.ray.intersectsBox(box)) continue;
      for (let i = part.from; i < part.to; i += 3) {
        a.fromArray(this.position, 3 * i); b.fromArray(this.position, 3 * i + 3); c.fromArray(this.position, 3 * i + 6);
        if (!ray.ray.intersectTriangle(a, b, c, false, hit)) continue;
        const d = hit.distanceTo(ray.ray.origin);
        if (d < best && cut.x * hit.x + cut.y * hit.y + cut.z * hit.z <= cut.w) { best = d; found = part.element; }
      }
    }
    return found;
  }
}
