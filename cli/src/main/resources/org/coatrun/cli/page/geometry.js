import { bytesOf } from "./dom.js";

/**
 * The meshes of the page. The file holds local meshes of facets, on whole steps of a scale each, and
 * a table of instances; here they become one list of world triangles.
 */
export async function inflated(text) {
  const stream = new Blob([bytesOf(text)]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Response(stream).arrayBuffer();
}

/** Like meshes, and where they stand. */
export function readGeometry(buffer) {
  const { whole, single } = numbersIn(buffer);
  const all = (read) => Array.from({ length: whole() }, read);
  const singles = (count) => Float32Array.from({ length: count }, single);
  const meshes = all(() => ({ sizes: new Uint32Array(whole()), scale: single() }));
  for (const mesh of meshes) readFacets(mesh, whole);
  for (const mesh of meshes) readCorners(mesh, whole);
  for (const mesh of meshes) readVertices(mesh, whole);
  const axes = all(() => singles(9));
  const instances = all(() => {
    const mesh = meshes[whole()], element = whole(), m = new Float32Array(12);
    m.set(axes[whole()]);
    m.set(singles(3), 9);
    return { mesh, element, m };
  });
  return place(instances, meshes.length);
}

/** Numbers of seven bits a byte, the least first, and singles. */
function numbersIn(buffer) {
  const bytes = new Uint8Array(buffer), view = new DataView(buffer);
  let at = 0;
  const whole = () => {
    let number = 0, shift = 0, byte;
    do {
      byte = bytes[at++];
      number |= (byte & 0x7f) << shift;
      shift += 7;
    } while (byte > 0x7f);
    return number;
  };
  const single = () => { at += 4; return view.getFloat32(at - 4, true); };
  return { whole, single };
}

function readFacets(mesh, whole) {
  const { sizes } = mesh;
  mesh.states = new Uint8Array(sizes.length);
  let corners = 0;
  for (let f = 0; f < sizes.length; f++) {
    const both = whole();
    mesh.states[f] = both & 1;
    corners += sizes[f] = both >> 1;
  }
  mesh.face = new Uint8Array(corners - 2 * sizes.length);
  mesh.index = new Uint16Array(3 * mesh.face.length);
}

/**
 * Facets become triangles from their first corner. A vertex is drawn in one state: what is exposed and
 * what is covered have one each where they meet.
 */
function readCorners(mesh, whole) {
  const { sizes, states } = mesh, corners = mesh.face.length + 2 * sizes.length;
  const drawn = new Int32Array(2 * corners); // by vertex and state: its number, counted from one
  let vertices = 0, triangle = 0, count = 0;
  mesh.drawnFrom = new Uint16Array(corners);
  const corner = (state) => {
    const back = whole(), vertex = back === 0 ? vertices++ : vertices - back, key = 2 * vertex + state;
    if (drawn[key] === 0) {
      mesh.drawnFrom[count++] = vertex;
      drawn[key] = count;
    }
    return drawn[key] - 1;
  };
  for (let f = 0; f < sizes.length; f++) {
    const first = corner(states[f]);
    let last = corner(states[f]);
    for (let left = sizes[f] - 2; left > 0; left--) {
      const next = corner(states[f]);
      mesh.index[3 * triangle] = first;
      mesh.index[3 * triangle + 1] = last;
      mesh.index[3 * triangle + 2] = next;
      mesh.face[triangle++] = states[f];
      last = next;
    }
  }
  mesh.inFile = vertices;
  mesh.vertices = count;
}

/** Steps from the vertex before: nought, one back, one on, two back and so on. */
function readVertices(mesh, whole) {
  const given = new Int16Array(3 * mesh.inFile);
  for (let i = 0; i < given.length; i++) {
    const both = whole();
    given[i] = (both & 1 ? -(both + 1) / 2 : both / 2) + (i < 3 ? 0 : given[i - 3]);
  }
  mesh.xyz = new Int16Array(3 * mesh.vertices);
  for (let v = 0; v < mesh.vertices; v++) for (let k = 0; k < 3; k++) mesh.xyz[3 * v + k] = given[3 * mesh.drawnFrom[v] + k];
}

/** Edges where two faces meet at an angle, or where a face ends: pairs of vertices. */
function edgesOf({ xyz, index, face, vertices }) {
  const spot = new Map(), same = new Uint16Array(vertices);
  for (let v = 0; v < vertices; v++) {
    const name = ((xyz[3 * v] + 32768) * 65536 + (xyz[3 * v + 1] + 32768)) * 65536 + (xyz[3 * v + 2] + 32768);
    if (!spot.has(name)) spot.set(name, v);
    same[v] = spot.get(name);
  }
  const seen = new Map(), normals = [];
  for (let t = 0; t < face.length; t++) {
    normals.push(normalOf(xyz, index[3 * t], index[3 * t + 1], index[3 * t + 2]));
    for (let k = 0; k < 3; k++) {
      const a = same[index[3 * t + k]], b = same[index[3 * t + ((k + 1) % 3)]];
      const key = a < b ? a * 65536 + b : b * 65536 + a;
      seen.set(key, seen.has(key) && isFlat(normals[seen.get(key)], normals[t]) ? -1 : t);
    }
  }
  const pairs = [];
  seen.forEach((t, key) => { if (t >= 0) pairs.push(Math.floor(key / 65536), key % 65536); });
  return pairs;
}

const isFlat = (n, m) => n && Math.abs(n[0] * m[0] + n[1] * m[1] + n[2] * m[2]) > 0.9;

function normalOf(xyz, a, b, c) {
  const u = [0, 1, 2].map((i) => xyz[3 * b + i] - xyz[3 * a + i]);
  const v = [0, 1, 2].map((i) => xyz[3 * c + i] - xyz[3 * a + i]);
  const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const l = Math.hypot(...n) || 1;
  return n.map((x) => x / l);
}

function place(instances, unique) {
  const sum = (of) => instances.reduce((s, i) => s + of(i.mesh), 0);
  const vertices = sum((m) => m.vertices);
  const position = new Float32Array(3 * vertices), owner = new Float32Array(vertices), state = new Uint8Array(vertices);
  const index = new Uint32Array(sum((m) => m.index.length));
  const parts = [];
  let v = 0, c = 0;
  for (const { mesh, element, m } of instances) {
    const box = put(mesh, m, position, 3 * v);
    owner.fill(element, v, v + mesh.vertices);
    for (let i = 0; i < mesh.index.length; i++) {
      const corner = v + mesh.index[i];
      index[c + i] = corner;
      state[corner] = mesh.face[(i / 3) | 0];
    }
    parts.push({ element, mesh, m, first: v, from: c, to: c + mesh.index.length, box });
    v += mesh.vertices; c += mesh.index.length;
  }
  return { position, owner, state, index, parts, triangles: index.length / 3, unique };
}

/** Puts the corners of a mesh where an instance stands; gives their box. Plain loops: this is most of the load. */
function put({ xyz, vertices, scale }, m, position, to) {
  let x0 = Infinity, y0 = Infinity, z0 = Infinity, x1 = -Infinity, y1 = -Infinity, z1 = -Infinity;
  for (let i = 0; i < 3 * vertices; i += 3) {
    const a = xyz[i] * scale, b = xyz[i + 1] * scale, c = xyz[i + 2] * scale;
    const x = m[9] + a * m[0] + b * m[3] + c * m[6], y = m[10] + a * m[1] + b * m[4] + c * m[7], z = m[11] + a * m[2] + b * m[5] + c * m[8];
    position[to + i] = x; position[to + i + 1] = y; position[to + i + 2] = z;
    if (x < x0) x0 = x; if (x > x1) x1 = x;
    if (y < y0) y0 = y; if (y > y1) y1 = y;
    if (z < z0) z0 = z; if (z > z1) z1 = z;
  }
  return [x0, y0, z0, x1, y1, z1];
}

/** The edges of all parts, found once for like meshes; null where they are more than so many numbers. */
export function edgesOfAll(parts, most) {
  let size = 0;
  for (const { mesh } of parts) {
    mesh.edges ??= edgesOf(mesh);
    size += mesh.edges.length;
    if (size > most) return null;
  }
  const edges = new Uint32Array(size);
  let at = 0;
  for (const { mesh, first } of parts) for (const v of mesh.edges) edges[at++] = first + v;
  return edges;
}

const BOX = [0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5];

/** Boxes in place of some parts, each in the axes of its own mesh, for use while the view moves. */
export function plainBoxes(parts) {
  const position = new Float32Array(24 * parts.length), owner = new Float32Array(8 * parts.length), index = new Uint32Array(36 * parts.length);
  parts.forEach(({ mesh, element, m }, n) => {
    mesh.box ??= put(mesh, [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0], new Float32Array(3 * mesh.vertices), 0);
    for (let i = 0; i < 8; i++) {
      const p = [mesh.box[i & 1 ? 3 : 0], mesh.box[i & 2 ? 4 : 1], mesh.box[i & 4 ? 5 : 2]];
      for (let k = 0; k < 3; k++) position[24 * n + 3 * i + k] = m[9 + k] + p[0] * m[k] + p[1] * m[3 + k] + p[2] * m[6 + k];
      owner[8 * n + i] = element;
    }
    for (let i = 0; i < 36; i++) index[36 * n + i] = 8 * n + BOX[i];
  });
  return { position, owner, index };
}
