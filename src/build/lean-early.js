import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { minifySync } from 'vite';

/**
 * Astro integration: the script that runs before the first paint goes out without its comments and spaces. It is no
 * module, and Vite packs modules alone.
 *
 * @returns {import('astro').AstroIntegration}
 */
export function leanEarly() {
  return {
    name: 'throwbook-lean-early',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const file = fileURLToPath(new URL('early.js', dir));
        const { code, errors } = minifySync(file, readFileSync(file, 'utf8'));
        if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
        writeFileSync(file, code);
      },
    },
  };
}
