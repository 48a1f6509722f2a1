import type { AnyCalculator, Entry } from '../../calculators/define.ts';
import type { QuantityNote } from '../../calculators/quantity-notes.ts';
import { unitOf } from '../../units/units.ts';
import type { DataSet, Row } from './data-set.ts';

/** A term as the glossary has it. */
export interface Term {
  readonly id: string;
  readonly term: string;
  readonly also?: string | undefined;
  readonly meaning: string;
  readonly see: readonly string[];
}

export function glossaryData(terms: readonly Term[]): DataSet {
  return {
    path: 'glossary',
    title: 'Glossary',
    means: 'Terms of the trade and of this site, in plain words.',
    columns: [
      { name: 'id', type: 'text', means: 'Its place on the page of the glossary.' },
      { name: 'term', type: 'text', means: 'The term.' },
      { name: 'also', type: 'text', optional: true, means: 'What else it is called.' },
      { name: 'meaning', type: 'text', means: 'What it means.' },
      { name: 'see', type: 'texts', means: 'The ids of terms that belong to it.' },
    ],
    rows: [...terms]
      .sort((a, b) => a.term.localeCompare(b.term, 'en-GB'))
      .map(({ id, term, also, meaning, see }) => ({ id, term, also, meaning, see })),
  };
}

function measured(entry: Entry): Row {
  if (entry.type === 'choice')
    return { kind: 'choice', unit: '', options: Object.values(entry.options) };
  return {
    kind: entry.kind,
    unit: unitOf(entry.rangeUnit).symbol,
    leastPossible: entry.hard[0],
    leastUsual: entry.usual[0],
    mostUsual: entry.usual[1],
    mostPossible: entry.hard[1],
    shopPlusMinus: entry.type === 'number' ? entry.usualPlusMinus : undefined,
    options: [],
  };
}

/** Every quantity that can be entered. */
export function symbolsData(
  entries: readonly Entry[],
  notes: Readonly<Record<string, QuantityNote>>,
  calculators: readonly AnyCalculator[],
): DataSet {
  return {
    path: 'symbols',
    title: 'Symbols',
    means:
      'Every quantity that can be entered, with its usual range and shop ±: a practitioner’s judgement, common practice without a source.',
    columns: [
      { name: 'name', type: 'text', means: 'What links, files and checks call it.' },
      { name: 'symbol', type: 'text', means: 'Its symbol; a subscript follows an underscore.' },
      { name: 'label', type: 'text', means: 'What it is called.' },
      { name: 'kind', type: 'text', means: 'Its kind: length, mass, pressure; or choice.' },
      { name: 'unit', type: 'text', means: 'The unit of the numbers of the row.' },
      { name: 'leastPossible', type: 'number', optional: true, means: 'Below it is refused.' },
      { name: 'leastUsual', type: 'number', optional: true, means: 'Below it is flagged.' },
      { name: 'mostUsual', type: 'number', optional: true, means: 'Above it is flagged.' },
      { name: 'mostPossible', type: 'number', optional: true, means: 'Above it is refused.' },
      {
        name: 'shopPlusMinus',
        type: 'number',
        optional: true,
        means: 'How surely a shop knows it: about two standard deviations.',
      },
      { name: 'options', type: 'texts', means: 'What can be chosen, for a choice.' },
      { name: 'measure', type: 'text', means: 'How it is measured at the bench.' },
      { name: 'note', type: 'text', optional: true, means: 'A remark on it.' },
      { name: 'calculators', type: 'texts', means: 'The ids of the calculators that ask for it.' },
    ],
    rows: entries.map((entry) => {
      const { name, symbol, label } = entry;
      const note = notes[name];
      return {
        name,
        symbol,
        label,
        ...measured(entry),
        measure: note?.measure,
        note: note?.note,
        calculators: calculators
          .filter(({ inputs }) => Object.values(inputs).some((input) => input.name === name))
          .map(({ id }) => id),
      };
    }),
  };
}
