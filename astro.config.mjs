import mdx from '@astrojs/mdx';
import { unified } from '@astrojs/markdown-remark';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { leanEarly } from './src/build/lean-early.js';
import { offline } from './src/build/offline.js';
import { search } from './src/build/search.js';
import { rehypePlain } from './src/build/rehype-plain.js';
import { rehypePractise } from './src/build/rehype-practise.js';
import { rehypeSections } from './src/build/rehype-sections.js';
import { rehypeTerms } from './src/build/rehype-terms.js';
import { remarkDisplayMath } from './src/build/remark-display-math.js';
import { leanDeclarations } from './src/build/vite-lean-declarations.js';
import { withoutPreloads } from './src/build/vite-without-preloads.js';

// A host that serves the site below its root says so when it builds: THROWBOOK_BASE=/reference/
const base = process.env['THROWBOOK_BASE'] ?? '/';

// A subject of the dictionary, or a part of one.
const dictionary = /calculators[\\/]([a-z]+)[\\/](?:([a-z]+)\.)?quantities\.ts/;
// A choice with many options, or with a table behind it.
const choices = /calculators[\\/]\w+[\\/]([\w-]+)\.choices\.ts/;
// Svelte as far as forms need it, and the notebook, with what reads and writes numbers.
const common =
  /svelte[\\/]src[\\/](?!.*bindings[\\/](?:select|size|this|universal))|notebook[\\/]notebook|slots[\\/]content\.|(?:text[\\/]Symbol|site[\\/](?:save-text|load-calculator)|chart[\\/]size)\.|calculators[\\/](?:quantity|evaluate|output|output-unit|define)\.|units[\\/](?:units|result|field)\.|core[\\/]refuse/;
// What brings a page to life, what every calculator is made of, the bar and the numbers in prose; keys are heard
// before it is there.
const calculator =
  /components[\\/](?:(?:form(?![\\/](?:Pick|keys))|calculator|results(?![\\/]Shares))[\\/]\w+|slots[\\/]slots|evidence[\\/]strips|bar[\\/]NotebookBar|waking[\\/](?:alive|on-screen))\.|notebook[\\/](?:work|evaluation|carr)|units[\\/]plus-minus/;
// What every figure needs, or nearly every one.
const figure =
  /components[\\/](?:figures[\\/](?:index|types|Drawn|read|parts[\\/](?:FigureFrame|CutHatch))|chart[\\/](?:FoldedTable|Scroller|size|download))\./;

export default defineConfig({
  base,
  // Astro's own default drops the spaces around inline elements of an .astro file.
  compressHTML: true,
  build: { format: 'directory', inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  integrations: [
    mdx(),
    svelte({ compilerOptions: { runes: true } }),
    leanEarly(),
    search(),
    // Last: it keeps what the others have written.
    offline(),
  ],
  markdown: {
    // Highlighted code carries style attributes, which the policy below forbids.
    syntaxHighlight: false,
    processor: unified({
      remarkPlugins: [remarkMath, remarkDisplayMath],
      rehypePlugins: [
        [rehypeKatex, { output: 'mathml', strict: 'error', throwOnError: true }],
        // Before the sections are folded, so that its line is folded with them.
        rehypePractise,
        rehypeSections,
        // Before what gives links the path of the site.
        rehypeTerms,
        [rehypePlain, { base }],
      ],
    }),
  },
  // Scripts stay in files: a page then holds no inline code that the policy must make room for.
  vite: {
    // One style sheet for the site: a second page fetches none, and no script need name the sheet of a part.
    build: { assetsInlineLimit: 0, cssCodeSplit: false },
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              codeSplitting: {
                // A group takes along what its modules import, unless a group before it has it.
                groups: [
                  // The few bytes that every page begins with must not bring the rest along.
                  {
                    name: 'first',
                    test: /preload-helper|(?:site[\\/]to|form[\\/]keys)\.ts/,
                    priority: 7,
                  },
                  // What most pages share is one file: it packs better than forty, and is fetched at once. It is named,
                  // since what many pages use is not what every page uses. Before what follows, or that would take it.
                  { name: 'common', test: common, priority: 6 },
                  // The tables behind a choice are wanted where it is made, and not by all of its subject.
                  {
                    test: choices,
                    name: (id) => `choices-${choices.exec(id)?.[1] ?? ''}`,
                    priority: 5,
                  },
                  // Each subject of the dictionary by itself, for the pages that use it.
                  {
                    test: dictionary,
                    name: (id) => {
                      const [, subject = '', part = subject] = dictionary.exec(id) ?? [];
                      return `quantities-${part}`;
                    },
                    priority: 4,
                  },
                  // What every topic's page comes to life with is another.
                  { name: 'calculator', test: calculator, priority: 2 },
                  // And what figures have in common a third.
                  { name: 'figure', test: figure, priority: 1 },
                ],
              },
            },
          },
        },
      },
    },
    plugins: [leanDeclarations(), withoutPreloads()],
  },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "img-src 'self' data: blob:",
        "font-src 'self'",
        "connect-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "object-src 'none'",
      ],
      scriptDirective: { resources: ["'self'"] },
      styleDirective: { resources: ["'self'"] },
    },
  },
});
