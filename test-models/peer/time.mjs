// Opens a model with web-ifc and, where asked, makes all its meshes; to be timed from outside.
// Usage: node time.mjs FOLDER_OF_NODE_MODULES MODEL open|mesh
import { load, open } from './bodies.mjs';

const [modules, model, work] = process.argv.slice(2);
const api = await load(modules);
const id = open(api, model);
if (work === 'mesh') {
  api.StreamAllMeshes(id, (mesh) => {
    for (let i = 0; i < mesh.geometries.size(); i++) {
      api.GetGeometry(id, mesh.geometries.get(i).geometryExpressID).delete();
    }
  });
}
