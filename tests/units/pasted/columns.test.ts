import { describe, expect, test } from 'vitest';
import { pistonMasses } from '../../../src/calculators/quantities.ts';
import {
  readPasted,
  unitInHeading,
  type Pasted,
  type PastedAs,
} from '../../../src/units/pasted/columns.ts';

function read(text: string, as?: PastedAs): Pasted {
  const found = readPasted(text, pistonMasses, as);
  if ('say' in found) throw new Error(found.say);
  return found;
}
const cells = (text: string, as?: PastedAs): readonly (readonly string[])[] =>
  read(text, as).columns.map((column) => column.cells);

describe('what is copied from a spreadsheet', () => {
  test('is one column with comma decimals and the unit in its head', () => {
    const { columns, rest } = read('Kolben [g]\r\n428,0\r\n427,1\r\n429,2\r\n');
    expect(columns).toEqual([
      { heading: 'Kolben [g]', unit: 'g', holds: 'numbers', cells: ['428,0', '427,1', '429,2'] },
    ]);
    expect(rest).toEqual([]);
  });

  test('keeps a blank cell and one that is no number in their places', () => {
    expect(cells('old\tnew\n428,0\t318,0\n\t317,2\n427,9\tn/a\n')).toEqual([
      ['428,0', '', '427,9'],
      ['318,0', '317,2', 'n/a'],
    ]);
    // A blank line between two readings is a part that was not weighed.
    expect(cells('428.0\n\n429.2')).toEqual([['428.0', '', '429.2']]);
  });

  test('puts rows to the cylinders that it numbers, in whatever order', () => {
    const { columns } = read('Cyl\tg\n3\t428.3\n1\t428.1\n');
    expect(columns.map(({ holds }) => holds)).toEqual(['places', 'numbers']);
    expect(columns[1]?.cells).toEqual(['428.1', '', '428.3']);
    // The same numbers without a heading might be anything but 1, 2, 3.
    expect(read('3\t428.3\n1\t428.1').columns[0]?.holds).toBe('numbers');
    expect(read('1\t428.3\n2\t428.1').columns[0]?.holds).toBe('places');
    // A number twice is no number of a cylinder.
    expect(read('Cyl\tg\n1\t428.3\n1\t428.1').columns[0]?.holds).toBe('numbers');
  });

  test('ends where a line sums up, and keeps that line', () => {
    const { columns, rest, to } = read('Part\tg\nP1\t428.0\nP2\t427.0\nMean\t427.5\nSpread\t1.0\n');
    expect(columns.map(({ holds }) => holds)).toEqual(['words', 'numbers']);
    expect(columns[1]?.cells).toEqual(['428.0', '427.0']);
    expect(rest).toEqual([
      ['Mean', '427.5'],
      ['Spread', '1.0'],
    ]);
    expect(to).toBe(3);
  });

  test('is turned where the cylinders stand side by side', () => {
    const block = 'Cyl\t1\t2\t3\t4\nPistons (oz)\t15.1\t15.0\t15.2\t15.1';
    const { turned, columns } = read(block);
    expect(turned).toBe(true);
    expect(columns.map(({ holds, heading, unit }) => [holds, heading, unit])).toEqual([
      ['places', 'Cyl', undefined],
      ['numbers', 'Pistons (oz)', 'oz'],
    ]);
    expect(read(block, { turned: false }).columns).toHaveLength(5);
    // Headings over the columns say how they stand.
    expect(read('piston;pin;small end;big end\n15,1;4,2;6,0;14,9').turned).toBe(false);
  });
});

describe('a file of separated values', () => {
  test('by commas with a point, by commas with quoted cells, by semicolons with a comma', () => {
    expect(cells('428.0,318.0\n427.1,317.2')).toEqual([
      ['428.0', '427.1'],
      ['318.0', '317.2'],
    ]);
    expect(cells('"428,0","318,0"\n"427,1",')).toEqual([
      ['428,0', '427,1'],
      ['318,0', ''],
    ]);
    expect(cells('\uFEFFalt;neu\n428,0;318,0')).toEqual([['428,0'], ['318,0']]);
    expect(cells('No,Mass\n1,428\n2,427')[1]).toEqual(['428', '427']);
  });

  test('of one column keeps its commas as decimal signs', () => {
    expect(cells('428,0\n427,1')).toEqual([['428,0', '427,1']]);
    expect(cells('Mass, g\n428,0')).toEqual([['428,0']]);
    // Whoever knows better says so.
    expect(cells('428,318', { separator: 'comma' })).toEqual([['428'], ['318']]);
  });

  test('holds separators, lines and quotes in quoted cells; an inch mark is no quote', () => {
    expect(read('"Mass;\nof ""A""";g\n428;1').columns[0]?.heading).toBe('Mass;\nof "A"');
    expect(cells('428\t1 7/8"\n427\t"3')).toEqual([
      ['428', '427'],
      ['1 7/8"', '"3'],
    ]);
  });

  test('is text, whatever it looks like', () => {
    const { columns } = read('=HYPERLINK("x")\t<script>\n428.0\t318.0');
    expect(columns.map(({ heading }) => heading)).toEqual(['=HYPERLINK("x")', '<script>']);
  });
});

test('lines are taken as the reader says', () => {
  const text = '2026\n428.0\n427.1\n855.1';
  expect(cells(text)).toEqual([['2026', '428.0', '427.1', '855.1']]);
  const { columns, rest } = read(text, { from: 1, to: 3 });
  expect(columns[0]?.cells).toEqual(['428.0', '427.1']);
  expect(columns[0]?.heading).toBe('2026');
  expect(rest).toEqual([['855.1']]);
  expect(read(text, { from: 9, to: 2 }).columns[0]?.cells).toEqual([]);
});

test('nothing, and far too much, is answered with a sentence', () => {
  expect(readPasted(' \n\t', pistonMasses)).toEqual({ say: 'Nothing is pasted yet.' });
  const many = Array.from({ length: 10_000 }, (_, row) => `${String(row)}\t428.0`).join('\n');
  expect(readPasted(many, pistonMasses)).toEqual({
    say: 'The text has 10000 lines; at most 100 are read. Copy only the cells of the parts that were weighed, at most one for each cylinder.',
  });
  expect(readPasted('4'.repeat(2_000_001), pistonMasses)).toHaveProperty('say');
  // No number anywhere: everything is shown, nothing is a number.
  expect(read('n/a\tnone').columns.map(({ holds }) => holds)).toEqual(['words', 'words']);
});

test.each([
  ['Mass [g]', 'g'],
  ['weight (oz)', 'oz'],
  ['pistons, lb', 'lb'],
  ['kg', 'kg'],
  ['Masse in g', 'g'],
  ['gr', undefined],
  ['Piston', undefined],
  ['length (mm)', undefined],
])('the unit in “%s”', (heading, unit) => {
  expect(unitInHeading(heading, 'mass')).toBe(unit);
});
