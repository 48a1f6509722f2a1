import { describe, expect, test } from 'vitest';
import {
  inOurWords,
  type Named,
  namesFor,
  plainWords,
} from '../../../src/components/search/names.ts';

const all: readonly Named[] = [
  { kind: 'topic', name: 'Bobweight', path: 'bobweight/', text: 'What to clamp on each crankpin.' },
  {
    kind: 'topic',
    name: 'Rod materials',
    elsewhere: ['titanium rod'],
    path: 'rod-materials/',
    text: 'What a material does to a rod.',
  },
  {
    kind: 'term',
    name: 'wrist pin',
    elsewhere: ['gudgeon pin', 'piston pin'],
    path: 'glossary/#wrist-pin',
    text: 'The hollow pin that joins piston and rod.',
  },
  {
    kind: 'term',
    name: 'pin lock',
    also: 'lock',
    elsewhere: ['circlip'],
    path: 'glossary/#lock',
    text: 'A spring-steel ring.',
  },
  {
    kind: 'term',
    name: 'λ',
    also: 'crank ratio',
    elsewhere: ['lambda'],
    path: 'glossary/#lambda',
    text: '',
  },
  { kind: 'quantity', name: 'Balance factor', symbol: 'f', path: 'symbols/#f', text: '' },
  {
    kind: 'quantity',
    name: 'Wrist pin',
    symbol: 'm_pin',
    path: 'symbols/#pinMass',
    text: 'Scale.',
  },
  { kind: 'result', name: 'Bobweight of one crankpin', symbol: 'm_bob', path: 'b/#r-m', text: '' },
  { kind: 'result', name: 'Reciprocating force', symbol: 'F_1', path: 'b/#r-f1', text: '' },
  { kind: 'result', name: 'Joint load', symbol: 'F_part,cl', path: 'b/#r-fp', text: '' },
  { kind: 'result', name: 'Throw over rod length', symbol: 'λ', path: 'b/#r-l', text: '' },
  { kind: 'page', name: 'Units', elsewhere: ['imperial'], path: 'units/', text: '' },
];

function paths(query: string): readonly string[] {
  return namesFor(query, all).map(({ named }) => named.path);
}

describe('a symbol', () => {
  test.each(['m_bob', 'mbob', 'M_BOB', 'm bob'])('is found as %s', (query) => {
    expect(paths(query)[0]).toBe('b/#r-m');
  });

  test('with two indices is found with and without what parts them', () => {
    expect(paths('F_part,cl')).toEqual(['b/#r-fp']);
    expect(paths('Fpartcl')).toEqual(['b/#r-fp']);
  });

  test('of one Greek letter is found by the letter and by its name, and so is the term', () => {
    for (const query of ['λ', 'lambda', 'Lambda'])
      expect([...paths(query)].sort()).toEqual(['b/#r-l', 'glossary/#lambda']);
  });

  test('is found by its letter before the index, after those that are the letter alone', () => {
    expect(paths('F')).toEqual(['symbols/#f', 'b/#r-fp', 'b/#r-f1']);
    // The other way round is none: f is written small.
    expect(paths('f')).toEqual(['symbols/#f']);
  });
});

describe('a name', () => {
  test('comes before what only begins so, and that before what has it in its meaning', () => {
    expect(paths('wrist pin')).toEqual(['glossary/#wrist-pin', 'symbols/#pinMass']);
    expect(paths('spring steel')).toEqual(['glossary/#lock']);
  });

  test('is found in either number, with or without hyphen and capitals', () => {
    for (const query of ['Wrist-Pins', 'wrist pins', ' WRIST  PIN '])
      expect(paths(query)[0], query).toBe('glossary/#wrist-pin');
  });

  test('of a topic is the text’s to find, unless it is called otherwise elsewhere', () => {
    expect(paths('bobweight')).toEqual(['b/#r-m']);
    expect(paths('titanium rods')).toEqual(['rod-materials/']);
  });

  test('that is nowhere gives nothing, and so does what is no word', () => {
    for (const query of ['', '  ', '?', 'xyzzy', 'wrist xyzzy']) expect(paths(query)).toEqual([]);
  });
});

describe('another word of the trade', () => {
  test('leads to ours and says which it was', () => {
    const [hit] = namesFor('gudgeon pins', all);
    expect(hit?.named.name).toBe('wrist pin');
    expect(hit?.by).toBe('gudgeon pin');
    expect(namesFor('wrist pin', all)[0]?.by).toBeUndefined();
  });

  test('stands for ours in the text, with the rest of the query', () => {
    expect(inOurWords('weight of gudgeon pins', all)).toEqual({
      query: 'weight of wrist pin',
      from: { word: 'gudgeon pin', to: 'wrist pin' },
    });
    expect(inOurWords('circlips', all).query).toBe('pin lock');
  });

  test('is left as it is where it leads to a topic or a page, whose text may have it', () => {
    expect(inOurWords('titanium rod', all)).toEqual({ query: 'titanium rod' });
    expect(inOurWords('imperial', all)).toEqual({ query: 'imperial' });
  });
});

test.each([
  ['Bob-Weight', 'bob weight'],
  ['désaxé', 'desaxe'],
  ['a rod’s big end', 'a rods big end'],
  ['λ = 1/4', 'λ 1 4'],
])('%s is compared as %s', (text, plain) => {
  expect(plainWords(text)).toBe(plain);
});
