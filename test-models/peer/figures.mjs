// Writes the area and volume of each body of some models, as web-ifc makes them, into a table.
// Usage: node figures.mjs FOLDER_OF_NODE_MODULES TABLE.csv MODEL...
import fs from 'node:fs';
import path from 'node:path';
import { bodies, load, open } from './bodies.mjs';

const [modules, table, ...models] = process.argv.slice(2);
if (models.length === 0) {
  console.error('Usage: node figures.mjs FOLDER_OF_NODE_MODULES TABLE.csv MODEL...');
  process.exit(2);
}
const api = await load(modules);
const digits = (number) => Number(number.toPrecision(7));
const rows = ['model,step,area_m2,volume_m3,gape'];
for (const model of models.sort()) {
  const id = open(api, model);
  for (const b of bodies(api, id).filter((body) => body.area > 0)) {
    const figures = [digits(b.area), digits(b.volume), Number(b.gape.toFixed(5))];
    rows.push([path.basename(model), b.expressID, ...figures].join(','));
  }
  api.CloseModel(id);
}
fs.writeFileSync(table, rows.join('\n') + '\n');
