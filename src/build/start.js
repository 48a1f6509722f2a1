import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { build, root } from './tool.js';
import { serve } from './serve.js';

const wanted = 4321;

if (!existsSync(join(root, 'node_modules', 'astro'))) {
  console.error('The packages are missing: run npm install in this folder, then npm start again.');
  process.exit(1);
}

console.log('Building the pages …');
const built = await build({ quiet: true });
if (built.code !== 0) {
  console.error(built.text);
  console.error('The site was not built: the lines above say why.');
  process.exit(1);
}

try {
  const { address, port } = await serve(join(root, 'dist'), wanted);
  if (port !== wanted) console.log(`Port ${wanted} is taken; using ${port} instead.`);
  console.log(`Throwbook is at ${address}`);
  console.log('Ctrl+C stops it.');
} catch (error) {
  const reason = error instanceof Error ? error.message : String(error);
  console.error(`No port from ${wanted} to ${wanted + 50} could be opened (${reason}).`);
  process.exit(1);
}
