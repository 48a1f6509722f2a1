import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { env, platform } from 'node:process';
import { fileURLToPath } from 'node:url';

/**
 * The engines that the site is tried in: where their programs usually are, the variable that names another, and the
 * packages that bring them on Debian.
 */
const engines = /** @type {const} */ ({
  chromium: {
    name: 'Chromium',
    variable: 'CHROME_PATH',
    packages: ['chromium'],
    usual: [
      '/usr/bin/chromium',
      '/usr/bin/chromium-browser',
      '/usr/lib/chromium/chromium',
      '/snap/bin/chromium',
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      'C:\\Program Files\\Chromium\\Application\\chrome.exe',
    ],
  },
  firefox: {
    name: 'Firefox',
    variable: 'FIREFOX_PATH',
    packages: ['firefox-esr'],
    usual: [
      '/usr/bin/firefox-esr',
      '/usr/bin/firefox',
      '/snap/bin/firefox',
      '/Applications/Firefox.app/Contents/MacOS/firefox',
      'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
    ],
  },
  // The driver; what it drives and the screen it draws on come with the same packages.
  webkit: {
    name: 'WebKitGTK',
    variable: 'WEBKIT_DRIVER_PATH',
    packages: ['webkit2gtk-driver', 'xvfb'],
    usual: ['/usr/bin/WebKitWebDriver'],
  },
});

/** @typedef {keyof typeof engines} Engine */

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
 * Program file of an engine on this machine; undefined when there is none. Its variable comes first.
 *
 * @param {Engine} engine
 * @returns {string | undefined}
 */
export function findEngine(engine) {
  const { variable, usual } = engines[engine];
  const named = env[variable];
  const found = named ? [named].find(runs) : usual.find(runs);
  return engine !== 'webkit' || (findMiniBrowser() && hasScreen()) ? found : undefined;
}

/**
 * The small browser that WebKit's driver drives.
 *
 * @returns {string | undefined}
 */
export function findMiniBrowser() {
  if (platform !== 'linux' || !existsSync('/usr/lib')) return undefined;
  const libraries = readdirSync('/usr/lib')
    .filter((name) => name.endsWith('-linux-gnu'))
    .map((name) => join('/usr/lib', name));
  return libraries
    .flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.startsWith('webkit2gtk-'))
        .map((name) => join(folder, name, 'MiniBrowser')),
    )
    .sort()
    .reverse()
    .find(runs);
}

/** WebKitGTK draws on a screen only, be it one that nobody sees. */
function hasScreen() {
  return Boolean(env['DISPLAY'] || env['WAYLAND_DISPLAY']) || runs('/usr/bin/Xvfb');
}

/**
 * As {@link findEngine} for each; on a Debian-like system with the rights to do so it installs those that are missing.
 */
export function installEngines() {
  const missing = /** @type {Engine[]} */ (Object.keys(engines)).filter(
    (engine) => findEngine(engine) === undefined && !env[engines[engine].variable],
  );
  if (missing.length === 0 || platform !== 'linux') return;
  if (process.getuid?.() !== 0 || !runs('/usr/bin/apt-get')) return;
  const names = missing.map((engine) => engines[engine].name).join(', ');
  console.log(`Not found: ${names}. Installing what the browser tests need …`);
  const options = {
    stdio: /** @type {const} */ ('ignore'),
    env: { ...env, DEBIAN_FRONTEND: 'noninteractive' },
    timeout: 600_000,
  };
  // Without a connection this must end soon.
  const patience = ['-o', 'Acquire::Retries=0', '-o', 'Acquire::http::Timeout=20'];
  spawnSync('apt-get', [...patience, 'update'], options);
  // One after the other: what cannot be had must not keep the others away.
  for (const engine of missing)
    try {
      const wanted = [...engines[engine].packages];
      execFileSync(
        'apt-get',
        [...patience, 'install', '-y', '--no-install-recommends', ...wanted],
        options,
      );
    } catch {
      // The line for a missing engine says it.
    }
}

/**
 * One line that says which engine is missing and what to do.
 *
 * @param {Engine} engine
 */
export function noEngine(engine) {
  const { name, packages, variable } = engines[engine];
  return `No ${name} found for the browser tests: install it (Debian: apt-get install ${packages.join(' ')}) or set ${variable} to its program file.`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  installEngines();
  for (const engine of /** @type {Engine[]} */ (Object.keys(engines)))
    console.log(findEngine(engine) ?? noEngine(engine));
  process.exitCode = findEngine('chromium') === undefined ? 1 : 0;
}
