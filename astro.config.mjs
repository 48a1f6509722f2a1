import mdx from '@astrojs/mdx';
import { unified } from '@astrojs/markdown-remark';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { rehypePlain } from './scripts/rehype-plain.js';
import { remarkDisplayMath } from './scripts/remark-display-math.js';
import { leanDeclarations } from './scripts/vite-lean-declarations.js';

// A host that serves the site below its root says so when it builds: THROWBOOK_BASE=/reference/
const base = process.env['THROWBOOK_BASE'] ?? '/';

export default defineConfig({
  base,
  // Astro's own default drops the spaces around inline elements of an .astro file.
  compressHTML: true,
  build: { format: 'directory', inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  integrations: [mdx(), svelte({ compilerOptions: { runes: true } })],
  markdown: {
    // Highlighted code carries style attributes, which the policy below forbids.
    syntaxHighlight: false,
    processor: unified({
      remarkPlugins: [remarkMath, remarkDisplayMath],
      rehypePlugins: [
        [rehypeKatex, { output: 'mathml', strict: 'error', throwOnError: true }],
        [rehypePlain, { base }],
      ],
    }),
  },
  // Scripts stay in files: a page then holds no inline code that the policy must make room for.
  vite: {
    build: { assetsInlineLimit: 0 },
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              codeSplitting: {
                // Each subject of the dictionary by itself, for the pages that use it.
                groups: [
                  {
                    test: /calculators[\\/]quantities[\\/]/,
                    name: (id) => `quantities-${id.replace(/^.*[\\/]([a-z-]+)\.ts.*$/, '$1')}`,
                  },
                ],
              },
            },
          },
        },
      },
    },
    plugins: [leanDeclarations()],
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
