import { env, execPath } from 'node:process';
import { afterEach, describe, expect, it } from 'vitest';
import { findEngine, noEngine } from '../../src/build/browser.js';

const variables = { chromium: 'CHROME_PATH', firefox: 'FIREFOX_PATH' } as const;
const before = { ...env };
afterEach(() => {
  for (const name of Object.values(variables))
    if (before[name] === undefined) delete env[name];
    else env[name] = before[name];
});

describe.each(Object.entries(variables))('%s', (name, variable) => {
  const engine = name as keyof typeof variables;

  it('is the program that its variable names', () => {
    // Any program that is sure to be there: nothing starts it.
    env[variable] = execPath;
    expect(findEngine(engine)).toBe(execPath);
  });

  it('is missing where that is none, whatever else is on the machine', () => {
    env[variable] = `${execPath}-that-is-not-there`;
    expect(findEngine(engine)).toBeUndefined();
  });
});

it.each(['chromium', 'firefox', 'webkit'] as const)(
  'that %s is missing is said in one line, with what to do',
  (engine) => {
    expect(noEngine(engine)).toMatch(
      /^No \w+ found .*apt-get install \S+.* set [A-Z_]+_PATH to .*\.$/,
    );
  },
);
