import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { parse } from 'yaml';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { calculators } from '../../../src/calculators/index.ts';
import { judgedLines, type JudgedSheet } from '../../../src/components/judgement/document.ts';
import { verdictOf, wordsOf, type Verdict } from '../../../src/components/judgement/verdict.ts';
import { must } from '../../calculators/must.ts';

const folder = join(import.meta.dirname, '../../../content/judgement');
const all: Readonly<Record<string, AnyCalculator>> = calculators;
const sheets = readdirSync(folder).map((file) => ({
  file,
  sheet: parse(readFileSync(join(folder, file), 'utf8')) as JudgedSheet & { readonly task: string },
}));
const linesOf = (sheet: JudgedSheet) => judgedLines(must(all[sheet.calculator]), sheet);

describe.each(sheets)('$file', ({ sheet }) => {
  const lines = linesOf(sheet);

  it('has faults to find, and lines that are right', () => {
    const faults = lines.filter(({ isFault }) => isFault).length;
    expect(faults).toBeGreaterThanOrEqual(3);
    expect(lines.length - faults).toBeGreaterThanOrEqual(3);
  });

  it('shows the calculator’s own number in every line that is right, and another in every changed one', () => {
    const honest = linesOf({
      ...sheet,
      lines: sheet.lines.map(({ line, shows, why }) => ({
        line,
        shows,
        why: why.replaceAll('with: ', ''),
      })),
    });
    for (const [at, { shows }] of lines.entries()) {
      const { with: changes, shows: shown = '' } = must(sheet.lines[at]);
      const isChanged = changes !== undefined && shown !== '';
      expect(shows === must(honest[at]).shows, must(lines[at]).line).toBe(!isChanged);
    }
  });

  it('says of every line why, with no number written by hand but in what was assumed or declared', () => {
    for (const { why, line, shows } of lines) {
      expect(why).toMatch(/\.$/);
      expect([why, line, shows].join(' ')).not.toMatch(/[{}]|NaN|Infinity/);
    }
  });
});

test('the card has the six faults that it announces', () => {
  const { sheet } = must(sheets.find(({ file }) => file === 'filled-balance-card.yaml'));
  expect(sheet.task).toMatch(/^Six lines/);
  expect(linesOf(sheet).filter(({ isFault }) => isFault)).toHaveLength(6);
});

test('the ends of the wrong weighing add up to what the right ones do', () => {
  const { sheet } = must(sheets.find(({ file }) => file === 'weighing-that-closes.yaml'));
  const shown = (line: string): number =>
    Number.parseFloat(must(linesOf(sheet).find((each) => each.line === line)).shows);
  // Each is printed to a tenth of a gram.
  expect(shown('Big end') + shown('Small end')).toBeCloseTo(shown('Both ends together'), 0);
});

it('refuses a change that alters nothing', () => {
  const sheet: JudgedSheet = {
    calculator: 'bobweight',
    set: 'baseline',
    lines: [{ line: 'Oil', shows: '{oil}', with: { pinMass: '2 * pinMass' }, why: 'It is.' }],
  };
  expect(() => linesOf(sheet)).toThrow(/alters nothing/);
});

describe('what is said of the marks', () => {
  it('knows the four fates of a line', () => {
    expect([verdictOf(true, true), verdictOf(true, false)]).toEqual(['found', 'missed']);
    expect([verdictOf(false, true), verdictOf(false, false)]).toEqual(['wronged', 'passed']);
  });

  it('says so where nothing is marked, where all is found, and how many are left', () => {
    expect(wordsOf(['missed', 'passed'], false)).toMatch(/^Nothing is marked/);
    expect(wordsOf(['found', 'passed'], false)).toMatch(/^Right: all 1 faults/);
    expect(wordsOf(['found', 'missed', 'wronged'], false)).toBe(
      'Not yet: 1 of 2 faults found. 1 line marked is right as it stands. 1 line more is wrong: look again.',
    );
    expect(wordsOf(['missed', 'passed'], true)).toMatch(/1 line was not marked\.$/);
  });

  test('it is right only where every line is', () => {
    const verdicts = fc.array(fc.constantFrom<Verdict>('found', 'missed', 'wronged', 'passed'), {
      minLength: 1,
    });
    fc.assert(
      fc.property(verdicts, fc.boolean(), (marks, isAll) => {
        const isRight =
          marks.includes('found') && !marks.some((mark) => mark === 'missed' || mark === 'wronged');
        expect(wordsOf(marks, isAll).startsWith('Right')).toBe(
          isRight || (isAll && !marks.some((m) => m !== 'passed')),
        );
      }),
    );
  });
});
