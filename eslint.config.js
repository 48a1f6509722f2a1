import astro from 'eslint-plugin-astro';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import { defineConfig } from 'eslint/config';
import ts from 'typescript-eslint';

/**
 * The layers, lowest first. Each may import itself and what stands before it, never what comes after:
 * physics that knew of pages could not be run, tested or trusted alone.
 */
const layers = [
  'core',
  'units',
  'calculators',
  'notebook',
  'checks',
  'components',
  'layouts',
  'pages',
];
/** Beside the order: the checks judge the calculators; what readers typed is none of their business. */
const alsoClosed = { checks: ['notebook'] };
/** `core` is pure arithmetic: no package, no module of the platform. */
const packages = '^[^./]';

function closedTo(layer) {
  const later = layers.slice(layers.indexOf(layer) + 1);
  return [...later, ...(alsoClosed[layer] ?? [])];
}

function arrows(layer, files, alsoForbidden = []) {
  const closed = closedTo(layer);
  const patterns = [...alsoForbidden];
  if (closed.length > 0)
    patterns.push({
      regex: `^(\\.\\./)+(src/)?(${closed.join('|')})/`,
      message: `src/${layer} stands below that layer and must not import it.`,
    });
  if (layer === 'core')
    patterns.push({ regex: packages, message: 'src/core imports nothing but itself.' });
  return {
    name: `arrows of ${files.join(', ')}`,
    files,
    rules: { 'no-restricted-imports': ['error', { patterns }] },
  };
}

/** What a reader's browser gets must not carry every calculator there is, nor tools of the build. */
const clientPatterns = [
  {
    regex: 'calculators/index(\\.ts)?$',
    message: 'Client code imports the one declaration it shows, not the record of all.',
  },
  {
    regex: '^(mathjs|katex|yaml|subset-font|node:.*)$',
    message: 'A tool of the build must not reach the reader.',
  },
  {
    regex: '^(\\.\\./)+(src/)?checks/',
    message: 'The checks run at build; what the browser gets does not carry them.',
  },
];

export default defineConfig(
  { ignores: ['dist/**', '.astro/**', 'node_modules/**', 'public/**'] },
  ...ts.configs.recommended,
  ...svelte.configs['flat/recommended'],
  ...svelte.configs['flat/prettier'],
  ...astro.configs['flat/recommended'],
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { globals: globals.browser, parserOptions: { parser: ts.parser } },
    // Caches and lists of work in hand are plain on purpose: a change of theirs must redraw nothing.
    rules: { 'svelte/prefer-svelte-reactivity': 'off' },
  },
  {
    files: ['src/build/**/*.js', '*.config.{js,mjs,ts}'],
    languageOptions: { globals: globals.node },
  },
  {
    files: ['src/build/offline-worker.js'],
    languageOptions: { globals: globals.serviceworker },
  },
  { files: ['public/**/*.js'], languageOptions: { globals: globals.browser } },
  {
    linterOptions: { reportUnusedDisableDirectives: 'error', noInlineConfig: true },
    rules: {
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/ban-ts-comment': ['error', { 'ts-expect-error': true }],
      eqeqeq: 'error',
      'no-console': 'off',
      'prefer-const': 'error',
    },
  },
  ...layers.map((layer) => arrows(layer, [`src/${layer}/**/*.{js,ts,svelte,astro}`])),
  // Later entries replace earlier ones, so these repeat their layer's arrows.
  arrows('notebook', ['src/notebook/**/*.{ts,svelte}'], clientPatterns),
  arrows(
    'components',
    [
      'src/components/**/*.{svelte,svelte.ts}',
      'src/components/**/*.astro/*.{js,ts}',
      'src/components/{bar,card,chart,form,home,results,tools,waking}/**/*.ts',
      // What the build tells of the rows is made from all declarations.
      'src/components/parts/!(tell).ts',
      // And so is the list of all names.
      'src/components/search/!(all-names).ts',
      'src/components/slots/slots.ts',
    ],
    clientPatterns,
  ),
  arrows('pages', ['src/{layouts,pages}/**/*.astro/*.{js,ts}'], clientPatterns),
);
