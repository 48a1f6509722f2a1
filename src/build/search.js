import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { close, createIndex } from 'pagefind';

/** The folder of the index in the site; `components/search` asks for it by this name. */
const folderName = 'pagefind';

/** What finds the words and what it reads. Of pagefind's own dialogs and of other languages' code the site has no use. */
const wanted =
  /^(?:pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|.*\.pf_(?:meta|index|fragment)|wasm\.en.*\.pagefind)$/;

/**
 * What a page holds beside its text: controls, numbers that the reader changes, tables of them, formulas, what is
 * there for paper, for a wide page or for links of before, and what stands on another page in full.
 */
const beside = [
  'button',
  'select',
  'label',
  'nav',
  'svg',
  'math',
  'table',
  '[hidden]',
  '[aria-hidden="true"]',
  '.calculator',
  '.figure-wide',
  '.figure-island details',
  '[data-notebook-bar]',
  '.term-meaning',
  '.topic-ways',
  '.topic-next',
  '.visually-hidden',
  '.moved',
];

/** Pages that are found by the names of what stands on them, or that nobody looks for. */
const left = /^(?:404\.html|(?:glossary|search|symbols)\/index\.html)$/;

/** How much a page counts beside a topic's: its working and its checks repeat the topic's words. */
const weights = /** @type {const} */ ([
  [/^checks\//, 0.3],
  [/\/working\/index\.html$/, 0.5],
]);

/**
 * A page as it is indexed.
 *
 * @param {string} file path in the site's folder, with slashes
 * @param {string} html
 */
function weighed(file, html) {
  const weight = weights.find(([where]) => where.test(file))?.[1];
  return weight === undefined
    ? html
    : html.replace('<main ', `<main data-pagefind-weight="${weight}" `);
}

/**
 * Throws what pagefind complains of.
 *
 * @template {{ errors: readonly string[] }} T
 * @param {T} answer
 */
function checked(answer) {
  if (answer.errors.length > 0) throw new Error(`pagefind: ${answer.errors.join('\n')}`);
  return answer;
}

/**
 * Writes the index of a built site's text into its folder.
 *
 * @param {string} folder of the built site
 * @param {readonly { title: string, path: string, text: string }[]} [entries] what is found by itself though it is only
 *   a part of a page: `path` leads to it from the site's root
 * @returns {Promise<{ pages: number, size: number }>} the pages and entries it knows, and its bytes
 */
export async function writeIndex(folder, entries = []) {
  const { index } = checked(
    await createIndex({ rootSelector: 'main', excludeSelectors: beside, maxFragments: 60 }),
  );
  if (index === undefined) throw new Error('pagefind gave no index.');
  try {
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((name) => name.replaceAll('\\', '/'))
      .filter((name) => name.endsWith('.html') && !left.test(name))
      // The same site gives the same index.
      .sort();
    for (const file of files) {
      const content = weighed(file, readFileSync(join(folder, file), 'utf8'));
      checked(await index.addHTMLFile({ sourcePath: file, content }));
    }
    for (const { title, path, text } of entries)
      checked(
        await index.addCustomRecord({
          url: `/${path}`,
          content: `${title}. ${text}`,
          language: 'en-gb',
          meta: { title },
        }),
      );
    let size = 0;
    for (const { path, content } of checked(await index.getFiles()).files) {
      if (!wanted.test(path)) continue;
      const to = join(folder, folderName, path);
      mkdirSync(dirname(to), { recursive: true });
      writeFileSync(to, content);
      size += content.length;
    }
    return { pages: files.length + entries.length, size };
  } finally {
    await close();
  }
}

/**
 * Astro integration: the text of the built site can be searched. A development server has no index; its search knows
 * the names alone.
 *
 * @returns {import('astro').AstroIntegration}
 */
export function search() {
  return {
    name: 'throwbook-search',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const { pages, size } = await writeIndex(folder, entriesOf(folder));
        logger.info(`${pages} pages and entries, ${Math.round(size / 1000)} kB`);
      },
    },
  };
}

/**
 * The terms and quantities that the pages of the glossary and of the symbols explain.
 *
 * @param {string} folder
 */
function entriesOf(folder) {
  /** @type {import('../components/search/names.ts').Named[]} */
  const names = JSON.parse(readFileSync(join(folder, 'search', 'names.json'), 'utf8'));
  return names
    .filter(({ kind, text }) => (kind === 'term' || kind === 'quantity') && text !== '')
    .map(({ name, path, text }) => ({ title: name, path, text }));
}
