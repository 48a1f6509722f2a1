import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { minifySync } from 'vite';

/** What runs before the first paint: of a page, and of a part that stands in a frame of another site. */
const names = ['early.js', 'early-embed.js'];

/**
 * Astro integration: the scripts that run before the first paint go out without their comments and spaces. They are no
 * modules, and Vite packs modules alone.
 *
 * @returns {import('astro').AstroIntegration}
 */
export function leanEarly() {
  return {
    name: 'throwbook-lean-early',
    hooks: {
      'astro:build:done': ({ dir }) => {
        for (const name of names) {
          const file = fileURLToPath(new URL(name, dir));
          const { code, errors } = minifySync(file, readFileSync(file, 'utf8'));
          if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
          writeFileSync(file, code);
        }
      },
    },
  };
}
