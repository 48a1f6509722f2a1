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
  '.caution',
  '.checked-line',
  '.figure-island details',
  '.figure-wide',
  '.moved',
  // Exercises with numbers, and their answers.
  '.handout-lines',
  '.handout-tasks',
  '.handout-figure',
  '.paper-foot',
  '.practice-paper',
  // It would be given away before the question is read.
  '.predict-answer',
  '[role="status"]',
  '.term-meaning',
  '.topic-cite',
  '.topic-next',
  '.topic-part',
  '.topic-ways',
  '.uses',
  '.visually-hidden',
  '.working-numbers',
  '.working-symbols',
  '[data-notebook-bar]',
  '[data-strip]',
];

/**
 * Pages whose every part is found by its name (components/search/names.ts), and those that nobody looks for: the class
 * view, the exercise sheets and the parts for pages of other sites are those of the topics.
 */
const left =
  /^(?:404\.html|(?:cautions|cite|glossary|search|symbols)\/index\.html|[^/]+\/(?:class|sheet)\/index\.html|embed\/.*)$/;

/** How much a page counts beside a topic's: its working, its handout and its checks repeat the topic's words. */
const weights = /** @type {const} */ ([
  [/^checks\//, 0.3],
  [/\/handout\/index\.html$/, 0.3],
  [/\/working\/index\.html$/, 0.5],
  [/\/teach\/index\.html$/, 0.3],
  [/\/practice\/index\.html$/, 0.2],
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
 * @returns {Promise<{ pages: number, size: number }>} the pages it knows, and its bytes
 */
export async function writeIndex(folder) {
  const { index } = checked(await createIndex({ rootSelector: 'main', excludeSelectors: beside }));
  if (index === undefined) throw new Error('pagefind gave no index.');
  try {
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((name) => name.replaceAll('\\', '/'))
      .filter((name) => name.endsWith('.html') && !left.test(name))
      // The same site gives the same index.
      .sort();
    if (files.length === 0) throw new Error(`There is no page to search in ${folder}.`);
    for (const file of files) {
      const content = weighed(file, readFileSync(join(folder, file), 'utf8'));
      checked(await index.addHTMLFile({ sourcePath: file, content }));
    }
    let size = 0;
    for (const { path, content } of checked(await index.getFiles()).files) {
      if (!wanted.test(path)) continue;
      const to = join(folder, folderName, path);
      mkdirSync(dirname(to), { recursive: true });
      writeFileSync(to, content);
      size += content.length;
    }
    return { pages: files.length, size };
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
        const { pages, size } = await writeIndex(fileURLToPath(dir));
        logger.info(`${pages} pages can be searched, ${Math.round(size / 1000)} kB`);
      },
    },
  };
}
