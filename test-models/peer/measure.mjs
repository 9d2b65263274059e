// Opens a model with web-ifc and prints, as JSON, how long it took and each element's area and volume.
// Usage: node measure.mjs MODEL FOLDER_OF_NODE_MODULES
import path from 'node:path';
import { bodies, load, open } from './bodies.mjs';

const [model, modules] = process.argv.slice(2);
if (!model || !modules) {
  console.error('Usage: node measure.mjs MODEL FOLDER_OF_NODE_MODULES');
  process.exit(2);
}
const start = performance.now();
const api = await load(modules);
const ready = performance.now();
const id = open(api, model);
const opened = performance.now();
const elements = bodies(api, id);
const meshed = performance.now();

for (const e of elements) {
  e.GlobalId = api.GetLine(id, e.expressID).GlobalId.value;
}
const times = { startMs: ready - start, openMs: opened - ready, meshMs: meshed - opened };
console.log(JSON.stringify({ model: path.basename(model), ...times, elements }, null, 1));
