// Opens a model with web-ifc and prints, as JSON, how long it took and each element's area and volume.
// Usage: node measure.mjs MODEL FOLDER_OF_NODE_MODULES
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const [model, modules] = process.argv.slice(2);
if (!model || !modules) {
  console.error('Usage: node measure.mjs MODEL FOLDER_OF_NODE_MODULES');
  process.exit(2);
}
const entry = path.join(modules, 'web-ifc', 'web-ifc-api-node.js');
const { IfcAPI } = await import(pathToFileURL(path.resolve(entry)).href);

const start = performance.now();
const api = new IfcAPI();
await api.Init();
const ready = performance.now();
const id = api.OpenModel(new Uint8Array(fs.readFileSync(model)), { COORDINATE_TO_ORIGIN: false });
const opened = performance.now();

function place(vertices, m) {
  const points = [];
  for (let k = 0; k < vertices.length; k += 6) {
    const [x, y, z] = vertices.subarray(k, k + 3);
    points.push([
      m[0] * x + m[4] * y + m[8] * z + m[12],
      m[1] * x + m[5] * y + m[9] * z + m[13],
      m[2] * x + m[6] * y + m[10] * z + m[14],
    ]);
  }
  return points;
}

function measure(points, corners, sum) {
  const o = points[0];
  for (let k = 0; k < corners.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((i) => points[corners[k + i]]);
    const u = b.map((v, i) => v - a[i]);
    const w = c.map((v, i) => v - a[i]);
    const n = [u[1] * w[2] - u[2] * w[1], u[2] * w[0] - u[0] * w[2], u[0] * w[1] - u[1] * w[0]];
    sum.area += Math.hypot(...n) / 2;
    sum.volume += n.reduce((s, v, i) => s + v * (a[i] - o[i]), 0) / 6;
  }
}

const elements = [];
api.StreamAllMeshes(id, (mesh) => {
  const sum = { expressID: mesh.expressID, area: 0, volume: 0 };
  for (let i = 0; i < mesh.geometries.size(); i++) {
    const placed = mesh.geometries.get(i);
    const g = api.GetGeometry(id, placed.geometryExpressID);
    const vertices = api.GetVertexArray(g.GetVertexData(), g.GetVertexDataSize());
    const corners = api.GetIndexArray(g.GetIndexData(), g.GetIndexDataSize());
    if (corners.length > 0) {
      measure(place(vertices, placed.flatTransformation), corners, sum);
    }
    g.delete();
  }
  elements.push(sum);
});
const meshed = performance.now();

for (const e of elements) {
  e.GlobalId = api.GetLine(id, e.expressID).GlobalId.value;
  e.volume = Math.abs(e.volume);
}
elements.sort((a, b) => a.expressID - b.expressID);
const times = { startMs: ready - start, openMs: opened - ready, meshMs: meshed - opened };
console.log(JSON.stringify({ model: path.basename(model), ...times, elements }, null, 1));
