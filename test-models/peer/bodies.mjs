// What web-ifc makes of the bodies of a model. Serves the scripts beside it.
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const SILENT = 6;

/** The library, ready for use, from a folder of node modules. */
export async function load(modules) {
  const entry = path.join(modules, 'web-ifc', 'web-ifc-api-node.js');
  const { IfcAPI } = await import(pathToFileURL(path.resolve(entry)).href);
  const api = new IfcAPI();
  await api.Init();
  api.SetLogLevel(SILENT);
  return api;
}

/** Opens a model and returns its number in the library. */
export function open(api, model) {
  return api.OpenModel(new Uint8Array(fs.readFileSync(model)), { COORDINATE_TO_ORIGIN: false });
}

/**
 * Each element that has a body: its number in the file, area in m2, volume in m3, and its gape: the
 * sum of all faces as vectors over the sum of their areas, which is nought where they close.
 */
export function bodies(api, id) {
  const elements = [];
  api.StreamAllMeshes(id, (mesh) => {
    const vector = [0, 0, 0];
    const sum = { expressID: mesh.expressID, area: 0, volume: 0, gape: 0 };
    for (let i = 0; i < mesh.geometries.size(); i++) {
      const placed = mesh.geometries.get(i);
      const g = api.GetGeometry(id, placed.geometryExpressID);
      const vertices = api.GetVertexArray(g.GetVertexData(), g.GetVertexDataSize());
      const corners = api.GetIndexArray(g.GetIndexData(), g.GetIndexDataSize());
      if (corners.length > 0) {
        measure(place(vertices, placed.flatTransformation), corners, sum, vector);
      }
      g.delete();
    }
    sum.volume = Math.abs(sum.volume);
    sum.gape = sum.area > 0 ? Math.hypot(...vector) / 2 / sum.area : 0;
    elements.push(sum);
  });
  return elements.sort((a, b) => a.expressID - b.expressID);
}

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

function measure(points, corners, sum, vector) {
  const o = points[0];
  for (let k = 0; k < corners.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((i) => points[corners[k + i]]);
    const u = b.map((v, i) => v - a[i]);
    const w = c.map((v, i) => v - a[i]);
    const n = [u[1] * w[2] - u[2] * w[1], u[2] * w[0] - u[0] * w[2], u[0] * w[1] - u[1] * w[0]];
    sum.area += Math.hypot(...n) / 2;
    n.forEach((v, i) => (vector[i] += v));
    sum.volume += n.reduce((s, v, i) => s + v * (a[i] - o[i]), 0) / 6;
  }
}
