import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { env, platform } from 'node:process';
import { fileURLToPath } from 'node:url';

const usual = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Chromium\\Application\\chrome.exe',
];

/** @param {string} path */
function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * Path of a Chromium on this machine; undefined when there is none. `CHROME_PATH` comes first.
 *
 * @returns {string | undefined}
 */
export function findBrowser() {
  const named = env['CHROME_PATH'];
  if (named !== undefined && named !== '') return runs(named) ? named : undefined;
  return usual.find(runs);
}

/**
 * As {@link findBrowser}; on a Debian-like system with the rights to do so it installs the missing one.
 *
 * @returns {string | undefined}
 */
export function findOrInstallBrowser() {
  const found = findBrowser();
  if (found !== undefined || env['CHROME_PATH'] || platform !== 'linux') return found;
  if (process.getuid?.() !== 0 || !runs('/usr/bin/apt-get')) return undefined;
  console.log('No Chromium found: installing the package chromium, which the browser tests need.');
  const quiet = {
    stdio: /** @type {const} */ ('ignore'),
    env: { ...env, DEBIAN_FRONTEND: 'noninteractive' },
  };
  spawnSync('apt-get', ['update'], quiet);
  try {
    execFileSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], quiet);
  } catch {
    return undefined;
  }
  return findBrowser();
}

/** One line that says what to do. */
export const noBrowser =
  'No Chromium found for the browser tests: install it (Debian: apt-get install chromium) or set CHROME_PATH to its program file.';

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const path = findOrInstallBrowser();
  console.log(path ?? noBrowser);
  process.exitCode = path === undefined ? 1 : 0;
}
