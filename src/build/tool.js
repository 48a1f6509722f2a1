import { spawn } from 'node:child_process';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of package.json. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Runs a tool of node_modules/.bin from the project's folder.
 *
 * @param {string} name
 * @param {readonly string[]} options
 * @param {{ quiet?: boolean, env?: Record<string, string> }} [how] `quiet` holds the output back
 * @returns {Promise<{ code: number, text: string }>} `text` is the output held back
 */
export function runTool(name, options, how = {}) {
  const bin = join(root, 'node_modules', '.bin');
  return new Promise((done) => {
    const child = spawn(join(bin, name), [...options], {
      cwd: root,
      // The folder of tools comes first, so that each of them runs on the Node that belongs to the project.
      env: {
        ...process.env,
        PATH: bin + delimiter + (process.env['PATH'] ?? ''),
        ASTRO_TELEMETRY_DISABLED: '1',
        ...how.env,
      },
      stdio: how.quiet === true ? ['ignore', 'pipe', 'pipe'] : 'inherit',
      shell: process.platform === 'win32',
    });
    let text = '';
    child.stdout?.on('data', (/** @type {Buffer} */ part) => (text += part.toString()));
    child.stderr?.on('data', (/** @type {Buffer} */ part) => (text += part.toString()));
    child.on('error', (error) => done({ code: 1, text: text + error.message }));
    child.on('close', (code) => done({ code: code ?? 1, text }));
  });
}

/**
 * Builds the site as it is published, into dist/.
 *
 * @param {{ quiet?: boolean }} [how]
 */
export function build(how = {}) {
  return runTool('astro', ['build'], { ...how, env: { NODE_ENV: 'production' } });
}
