import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

/**
 * Two projects. `unit` needs nothing but Node; `site` builds the site once as a reader would get it and
 * drives the system's Chromium. Modules ending in `.svelte.ts` are compiled as the server compiles them.
 */
export default defineConfig({
  plugins: [svelte({ configFile: false, compilerOptions: { runes: true } })],
  test: {
    // Tests in a browser mostly wait for it; leaving a core free, as is usual, would double their time on two.
    maxWorkers: '100%',
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          environment: 'node',
          include: [
            'tests/{build,core,units,calculators,notebook,content,components}/**/*.test.ts',
            'tests/runtime.test.ts',
          ],
        },
      },
      {
        extends: true,
        test: {
          name: 'site',
          environment: 'node',
          include: ['tests/site/**/*.test.ts'],
          globalSetup: ['tests/site/global-setup.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // A page on a busy machine may take its time to answer; what is waited for still has to come.
          expect: { poll: { timeout: 10_000 } },
        },
      },
    ],
  },
});
