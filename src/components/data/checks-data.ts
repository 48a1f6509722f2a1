import { evidenceWords, printedNumber, type Source } from '../../checks/case.ts';
import type { Row as CheckRow } from '../../checks/run.ts';
import type { Column, DataSet, Row } from './data-set.ts';

const columns: readonly Column[] = [
  { name: 'topic', type: 'text', means: 'The topic whose page of checks shows it.' },
  { name: 'case', type: 'text', means: 'The id of the case; several values may share one.' },
  { name: 'title', type: 'text', means: 'What the case is.' },
  { name: 'calculator', type: 'text', means: 'The id of the calculator that works it.' },
  { name: 'source', type: 'text', means: 'The id of the source, as in sources; or practice.' },
  { name: 'where', type: 'text', means: 'The place in the source.' },
  {
    name: 'evidence',
    type: 'text',
    oneOf: Object.keys(evidenceWords),
    means: 'How the text of the source was met.',
  },
  {
    name: 'inputs',
    type: 'texts',
    means: 'The numbers of the case as typed, each as name = number and unit.',
  },
  { name: 'output', type: 'text', means: 'The id of the result that is compared.' },
  { name: 'label', type: 'text', means: 'What this result is called.' },
  { name: 'unit', type: 'text', means: 'The unit of all numbers of the row; empty for a ratio.' },
  {
    name: 'published',
    type: 'text',
    optional: true,
    means: 'The value digit for digit as printed; none for a band.',
  },
  { name: 'value', type: 'number', optional: true, means: 'The same as a number.' },
  { name: 'atLeast', type: 'number', optional: true, means: 'The lower end of a band.' },
  { name: 'atMost', type: 'number', optional: true, means: 'The upper end of a band.' },
  {
    name: 'computed',
    type: 'number',
    optional: true,
    means: 'What this site’s calculator gives for these numbers.',
  },
  {
    name: 'relativeError',
    type: 'number',
    optional: true,
    means: 'Computed less published, as a share of the published value.',
  },
  {
    name: 'agreeingDigits',
    type: 'number',
    optional: true,
    means: 'Minus the logarithm to base ten of that share, at most 16; none for a misprint.',
  },
  { name: 'passes', type: 'yes or no', means: 'Whether it lies inside the tolerance.' },
  {
    name: 'exact',
    type: 'text',
    optional: true,
    means: 'Why the source means exactly this number.',
  },
  {
    name: 'derived',
    type: 'text',
    optional: true,
    means: 'The step from what is printed to this value, which itself is not printed.',
  },
  {
    name: 'printError',
    type: 'number',
    optional: true,
    means: 'How far the print may be off beyond its last digit, in the unit of the row.',
  },
  { name: 'insteadOfMisprint', type: 'text', optional: true, means: 'What a misprint should say.' },
  {
    name: 'why',
    type: 'text',
    optional: true,
    means: 'The reason of a band, of an error of the print, or of a misprint.',
  },
  { name: 'note', type: 'text', optional: true, means: 'A remark on the case.' },
];

function rowOf({ topic, case: entry, expected, ...row }: CheckRow): Row {
  const { id, title, calculator, source, where, evidence, inputs, note } = entry;
  const isValue = 'published' in expected;
  return {
    topic,
    case: id,
    title,
    calculator,
    source,
    where,
    evidence,
    inputs: Object.entries(inputs).map(([name, typed]) => `${name} = ${typed}`),
    output: expected.output,
    label: row.label,
    unit: row.unit,
    published: row.published,
    value: row.published === undefined ? undefined : printedNumber(row.published),
    atLeast: row.atLeast,
    atMost: row.atMost,
    computed: row.computed,
    relativeError: row.relativeError,
    agreeingDigits: row.agreeingDigits,
    passes: row.passes,
    exact: isValue ? expected.exact : undefined,
    derived: isValue ? expected.derived : undefined,
    printError: isValue ? expected.bookError?.size : undefined,
    insteadOfMisprint: isValue ? expected.misprint?.instead : undefined,
    why: isValue ? (expected.misprint ?? expected.bookError)?.reason : expected.why,
    note,
  };
}

/** Every value that the formulas are held to, published and computed, one a row. */
export function checksData(rows: readonly CheckRow[]): DataSet {
  return {
    path: 'checks',
    title: 'Checks',
    means: 'Every value that the formulas are held to: published, and computed here.',
    columns,
    rows: rows.map(rowOf),
  };
}

/** The texts that checks and tables name by id. */
export function sourcesData(sources: Readonly<Record<string, Source>>): DataSet {
  return {
    path: 'sources',
    title: 'Sources',
    means: 'Every source that the checks and the tables name.',
    columns: [
      { name: 'id', type: 'text', means: 'What checks and tables call it.' },
      { name: 'authors', type: 'text', means: 'Its authors, or the body that issued it.' },
      { name: 'title', type: 'text', means: 'Its title.' },
      { name: 'edition', type: 'text', optional: true, means: 'Its edition.' },
      { name: 'publisher', type: 'text', optional: true, means: 'Its publisher or journal.' },
      { name: 'year', type: 'text', means: 'Its year.' },
      {
        name: 'kind',
        type: 'text',
        oneOf: ['book', 'standard', 'paper', 'report', 'course'],
        means: 'What sort of text it is.',
      },
      {
        name: 'quotedBy',
        type: 'text',
        optional: true,
        means: 'Who quoted or retyped it, where the work itself was not met.',
      },
      {
        name: 'lost',
        type: 'yes or no',
        optional: true,
        means: 'Yes where neither author nor address leads back to the text.',
      },
      { name: 'note', type: 'text', optional: true, means: 'A remark on it.' },
    ],
    rows: Object.entries(sources).map(([id, source]) => ({ id, ...source })),
  };
}
