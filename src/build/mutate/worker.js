import { resolve } from 'node:path';
import { createVitest } from 'vitest/node';
import config from '../../../vitest.config.ts';

/*
 * A process of its own, begun by trials.js, which tells it one mutant after the other. The tests get the mutant's
 * text in the place of the file's; nothing on the disk is changed.
 */

/** @type {Map<string, string>} texts that stand for those of files */
const texts = new Map([
  // Reads every file of `src/core` with its types, for tests that are not run here.
  [resolve('tests/core/guard-calls.ts'), 'export const guardCalls = () => [];'],
]);
const served = {
  name: 'mutant',
  enforce: /** @type {const} */ ('pre'),
  /** @param {string} _code @param {string} id */
  transform(_code, id) {
    const text = texts.get(id.split('?')[0] ?? '');
    return text === undefined ? undefined : { code: text, map: null };
  },
};

const unit = config.test?.projects?.find(
  (project) => typeof project === 'object' && 'test' in project && project.test?.name === 'unit',
);
if (typeof unit !== 'object' || !('test' in unit))
  throw new Error('vitest.config.ts has no project “unit”');
const vitest = await createVitest(
  'test',
  {
    ...unit.test,
    name: 'unit',
    config: false,
    watch: true,
    // A slow machine is no wrong answer; trials.js ends what would never end.
    testTimeout: 3_600_000,
    hookTimeout: 3_600_000,
    // It would know a file by what stands on the disk.
    fsModuleCache: false,
    bail: 1,
    maxWorkers: 1,
    pool: 'forks',
    reporters: [{}],
  },
  // Files that are being worked on must not start tests of their own.
  { configFile: false, server: { watch: null }, plugins: [...(config.plugins ?? []), served] },
);
// It asks for all tests, that later calls find them by their paths.
const every = await vitest.globTestSpecifications();

/** @param {import('./tests.js').Stage} stage @returns {Promise<string[]>} the files of which a test fails */
async function failing({ tests, names }) {
  const wanted = new Set(tests.map((name) => resolve(name)));
  if (names === undefined) vitest.resetGlobalTestNamePattern();
  else vitest.setGlobalTestNamePattern(new RegExp(names, 'u'));
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(
    every.filter(({ moduleId }) => wanted.has(moduleId)),
  );
  // What other tests found before is still among the modules.
  const own = testModules.filter(({ moduleId }) => wanted.has(moduleId));
  if (own.length < wanted.size) throw new Error(`not all were run of ${tests.join(', ')}`);
  const wrong = own.filter((module) => !module.ok()).map((module) => module.relativeModuleId);
  return wrong.length === 0 && unhandledErrors.length > 0 ? [...tests] : wrong;
}

/** @param {{ file: string, text: string, stages: import('./tests.js').Stage[] }} mutant */
async function meet({ file, text, stages }) {
  const path = resolve(file);
  texts.set(path, text);
  vitest.invalidateFile(path);
  try {
    for (const stage of stages) {
      const by = await failing(stage);
      if (by.length > 0) return { caught: true, by: by.join(' ') };
    }
    return { caught: false, by: '' };
  } catch (error) {
    return { problem: String(error) };
  } finally {
    texts.delete(path);
    vitest.invalidateFile(path);
  }
}

process.on('message', async (/** @type {Parameters<typeof meet>[0]} */ mutant) => {
  process.send?.(await meet(mutant));
});
// Whoever began it has gone.
process.on('disconnect', () => process.exit());
process.send?.('ready');
