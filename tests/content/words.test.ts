import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { allowed, unwanted } from './unwanted-words.ts';

/** Only what is read: no attributes of components, no addresses, no formulas, no code. */
function prose(text: string): string {
  return text
    .replace(/^(?:calculators|import|order):?.*$/gmu, '')
    .replace(/<(?:V|Figure|Calculator|Checked|Working|SymbolList|Cite|Caution)\b[^>]*>/gu, '')
    .replace(/\]\([^)]*\)/gu, ']')
    .replace(/\{[a-z0-9-]+\.\w+(?:@\w+)?\}/gu, '')
    .replace(/\$\$[\s\S]*?\$\$|\$[^$\n]*\$/gu, '')
    .replace(/\bid[:=]\s*"?[\w-]+"?|\bsee: \[[^\]]*\]/gu, '');
}

/** All strings of a declaration, but for its ids, symbols and formulas. */
function strings(value: unknown, key = ''): string[] {
  if (typeof value === 'string')
    return ['id', 'name', 'symbol', 'formula', 'of', 'source'].includes(key) ? [] : [value];
  if (Array.isArray(value))
    return ['cautions', 'sources', 'asks', 'answers'].includes(key)
      ? []
      : value.flatMap((one) => strings(one));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([inner, one]) =>
    inner === 'text' && key === 'tex' ? [] : strings(one, inner),
  );
}

const files = globSync([
  'content/topics/*/index.mdx',
  'content/topics/*/teach.yaml',
  'content/lessons/*.mdx',
  'content/glossary.yaml',
  'content/cautions.yaml',
  'content/tables/crank-layouts.json',
]);
const shown: readonly (readonly [string, string])[] = [
  ...Object.entries(calculators).map(([id, one]) => [id, strings(one).join('\n')] as const),
  ...files.map((file) => [file, prose(readFileSync(file, 'utf8'))] as const),
];

it('looks at what is shown', () => {
  expect(shown.length).toBeGreaterThan(35);
  for (const [, text] of shown) expect(text.length).toBeGreaterThan(200);
});

describe.each(shown)('the words of %s', (_, text) => {
  it.each(unwanted)('%s: say %s', (word) => {
    const lines = text.split('\n').filter((line) => word.test(line));
    expect(lines.filter((line) => !allowed.some((place) => place.test(line)))).toEqual([]);
  });
});

it('finds each of them in a sentence that has it', () => {
  const faults = [
    'the sliding mass',
    'half of what slides',
    'the turning parts',
    'the share f',
    'the reciprocating fraction',
    'Spread (1 s)',
    'weighing hearsay',
    'Shape of the shank',
    'at the missed-shift speed',
    'the highest intended speed',
    'old gas',
    'the gas’s heats',
    'a V2 keeps it',
    'a sum and its closure',
    '6400 1/min',
    'the radial thickness',
    'both locks',
  ];
  expect(faults.map((fault) => unwanted.findIndex(([word]) => word.test(fault)))).toEqual(
    unwanted.map((_, place) => place),
  );
});
