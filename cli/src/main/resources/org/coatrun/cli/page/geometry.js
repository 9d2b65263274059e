/**
 * The meshes of the page. The file holds local meshes on int16 with a scale each, and a table of
 * instances (mesh, element, twelve floats); here they become one list of world triangles, and
 * one of plain boxes for use while the view moves.
 */
export async function readGeometry(text) {
  const bytes = Uint8Array.from(atob(text.trim()), (c) => c.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return expand(await new Response(stream).arrayBuffer());
}

const BOX = [0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5];

function expand(buffer) {
  const view = new DataView(buffer);
  let at = 0;
  const u32 = () => { at += 4; return view.getUint32(at - 4, true); };
  const f32 = () => { at += 4; return view.getFloat32(at - 4, true); };
  const meshes = [];
  for (let n = u32(); n > 0; n--) {
    const vertices = u32(), triangles = u32(), scale = f32();
    const xyz = new Int16Array(buffer, at, 3 * vertices); at += (6 * vertices + 3) & ~3;
    const index = new Uint16Array(buffer, at, 3 * triangles); at += (6 * triangles + 3) & ~3;
    const face = new Uint8Array(buffer, at, triangles); at += (triangles + 3) & ~3;
    meshes.push({ vertices, xyz, index, face, scale });
  }
  const instances = [];
  for (let n = u32(); n > 0; n--) {
    const mesh = meshes[u32()], element = u32();
    instances.push({ mesh, element, m: Array.from({ length: 12 }, f32) });
  }
  return place(instances, meshes.length);
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
  const boxes = { position: new Float32Array(24 * instances.length), owner: new Float32Array(8 * instances.length), index: new Uint32Array(36 * instances.length) };
  const parts = [];
  let v = 0, c = 0;
  instances.forEach(({ mesh, element, m }, number) => {
    const local = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
    const box = [...local];
    for (let i = 0; i < mesh.vertices; i++) {
      const p = [0, 1, 2].map((k) => mesh.xyz[3 * i + k] * mesh.scale);
      const w = world(m, p);
      widen(local, p); widen(box, w);
      position.set(w, 3 * (v + i));
      owner[v + i] = element;
    }
    for (let i = 0; i < mesh.index.length; i++) {
      index[c + i] = v + mesh.index[i];
      state[v + mesh.index[i]] = mesh.face[(i / 3) | 0];
    }
    plainBox(boxes, number, element, m, local);
    parts.push({ element, mesh, first: v, from: c, to: c + mesh.index.length, box });
    v += mesh.vertices; c += mesh.index.length;
  });
  return { position, owner, state, index, boxes, parts, triangles: index.length / 3, unique };
}

/** The edges of all parts; found once for like meshes, and only after the first picture. */
export function edgesOfAll(parts) {
  for (const { mesh } of parts) mesh.edges ??= edgesOf(mesh);
  const edges = new Uint32Array(parts.reduce((s, p) => s + p.mesh.edges.length, 0));
  let at = 0;
  for (const { mesh, first } of parts) for (const v of mesh.edges) edges[at++] = first + v;
  return edges;
}

const world = (m, p) => [0, 1, 2].map((k) => m[9 + k] + p[0] * m[k] + p[1] * m[3 + k] + p[2] * m[6 + k]);

function widen(box, p) {
  for (let k = 0; k < 3; k++) {
    if (p[k] < box[k]) box[k] = p[k];
    if (p[k] > box[3 + k]) box[3 + k] = p[k];
  }
}

function plainBox(boxes, number, element, m, local) {
  for (let i = 0; i < 8; i++) {
    boxes.position.set(world(m, [local[i & 1 ? 3 : 0], local[i & 2 ? 4 : 1], local[i & 4 ? 5 : 2]]), 24 * number + 3 * i);
    boxes.owner[8 * number + i] = element;
  }
  for (let i = 0; i < 36; i++) boxes.index[36 * number + i] = 8 * number + BOX[i];
}
