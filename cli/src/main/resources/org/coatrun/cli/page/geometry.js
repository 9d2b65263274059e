/**
 * The meshes of the page. The file holds local meshes on int16 with a scale each, and a table of
 * instances (mesh, element, twelve floats); here they become one list of world triangles.
 */
export async function readGeometry(text) {
  const bytes = Uint8Array.from(atob(text.trim()), (c) => c.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return expand(await new Response(stream).arrayBuffer());
}

function expand(buffer) {
  const view = new DataView(buffer);
  let at = 0;
  const u32 = () => { at += 4; return view.getUint32(at - 4, true); };
  const f32 = () => { at += 4; return view.getFloat32(at - 4, true); };
  const meshes = [];
  for (let n = u32(); n > 0; n--) {
    const vertices = u32(), triangles = u32(), scale = f32();
    const xyz = new Int16Array(buffer.slice(at, at + 6 * vertices)); at += 6 * vertices + (vertices % 2) * 2;
    const index = new Uint16Array(buffer.slice(at, at + 6 * triangles)); at += 6 * triangles + (triangles % 2) * 2;
    const face = new Uint8Array(buffer.slice(at, at + triangles)); at += (triangles + 3) & ~3;
    meshes.push({ xyz, index, face, scale });
  }
  const instances = [];
  let corners = 0;
  for (let n = u32(); n > 0; n--) {
    const mesh = meshes[u32()], element = u32();
    const m = Array.from({ length: 12 }, f32);
    instances.push({ mesh, element, m });
    corners += mesh.index.length;
  }
  return place(instances, corners, meshes.length);
}

function place(instances, corners, unique) {
  const position = new Float32Array(3 * corners);
  const owner = new Float32Array(corners);
  const state = new Uint8Array(corners);
  const parts = [];
  let c = 0;
  for (const { mesh, element, m } of instances) {
    const box = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
    const from = c;
    for (let i = 0; i < mesh.index.length; i++, c++) {
      const v = 3 * mesh.index[i];
      const x = mesh.xyz[v] * mesh.scale, y = mesh.xyz[v + 1] * mesh.scale, z = mesh.xyz[v + 2] * mesh.scale;
      for (let k = 0; k < 3; k++) {
        const w = m[9 + k] + x * m[k] + y * m[3 + k] + z * m[6 + k];
        position[3 * c + k] = w;
        if (w < box[k]) box[k] = w;
        if (w > box[3 + k]) box[3 + k] = w;
      }
      owner[c] = element;
      state[c] = mesh.face[(i / 3) | 0];
    }
    parts.push({ element, from, to: c, box });
  }
  return { position, owner, state, parts, triangles: corners / 3, unique };
}
