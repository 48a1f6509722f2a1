import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { patience } from './tests/site/support/patience.ts';

/**
 * Two projects. `unit` needs nothing but Node; `site` builds the site once as a reader would get it and
 * drives the system's Chromium. Modules ending in `.svelte.ts` are compiled as the server compiles them.
 */
export default defineConfig({
  plugins: [svelte({ configFile: false, compilerOptions: { runes: true } })],
  test: {
    // Tests in a browser mostly wait for it; leaving a core free, as is usual, would double their time on two.
    maxWorkers: '100%',
    // Longer than a few waits that fail, so that these are what is told. A machine with other work may take thirty
    // times as long as an idle one, so no time says that a test is wrong: this one only ends what would never end.
    testTimeout: 5 * patience,
    hookTimeout: 5 * patience,
    teardownTimeout: patience,
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
          setupFiles: ['tests/seed.ts'],
          // No module of these keeps what a test could leave behind, and fetching all anew for every file would
          // take half as much time again.
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'site',
          environment: 'node',
          include: ['tests/site/**/*.test.ts'],
          globalSetup: ['tests/site/global-setup.ts'],
          expect: { poll: { timeout: patience } },
        },
      },
    ],
  },
});
