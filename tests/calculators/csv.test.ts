import { describe, expect, it } from 'vitest';
import { csvCell, csvText, resultsCsv, seriesCsv, sweepCsv } from '../../src/calculators/csv.ts';
import { sweep } from '../../src/calculators/sweep.ts';
import { propagate } from '../../src/calculators/uncertainty.ts';
import { beam, beamInput } from './tiny.ts';
import { must } from './must.ts';

/** A reader of RFC 4180, written apart from the writer. */
function parse(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const c = text.charAt(i);
    if (quoted) {
      if (c !== '"') cell += c;
      else if (text[i + 1] === '"') {
        cell += '"';
        i++;
      } else quoted = false;
    } else if (c === '"') quoted = true;
    else if (c === ',') {
      rows.at(-1)?.push(cell);
      cell = '';
    } else if (c === '\r' && text[i + 1] === '\n') {
      rows.at(-1)?.push(cell);
      cell = '';
      rows.push([]);
      i++;
    } else cell += c;
  }
  expect(cell, 'the last line is ended').toBe('');
  rows.pop();
  return rows;
}

describe('a cell', () => {
  it.each([
    ['plain', 'plain'],
    ['a, b', '"a, b"'],
    ['say "x"', '"say ""x"""'],
    ['two\nlines', '"two\nlines"'],
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@cmd', "'@cmd"],
    ['\tx', "'\tx"],
    ['=A1,"b"', '"\'=A1,""b"""'],
  ])('writes the text %j as %j', (text, written) => expect(csvCell(text)).toBe(written));

  it('writes numbers in full, negative ones included, and nothing as nothing', () => {
    expect(csvCell(-0.1234567890123)).toBe('-0.1234567890123');
    expect(csvCell(undefined)).toBe('');
  });

  it('ends lines with CR LF', () => expect(csvText([['a', 1], ['b']])).toBe('a,1\r\nb\r\n'));
});

describe('results', () => {
  const input = beamInput;
  const other = { ...beamInput, load: 0, kind: 'fixed' } as const;
  const text = resultsCsv(
    beam,
    {
      baseline: {
        input,
        output: beam.compute(input),
        inputPlusMinus: { span: 0.005 },
        outputPlusMinus: propagate(beam, input, { span: 0.005 }),
      },
      candidate: { input: other, output: beam.compute(other) },
    },
    'metric',
  );
  const [head, baseline, candidate] = parse(text);
  const at = (title: string, row: string[] | undefined) => must(row)[must(head).indexOf(title)];

  it('put both sets under headings with units', () => {
    expect(parse(text)).toHaveLength(3);
    expect(at('Set', baseline)).toBe('baseline');
    expect(at('Set', candidate)).toBe('candidate');
    expect(at('Span (mm)', baseline)).toBe('1000');
    expect(at('Stress, greatest (MPa)', baseline)).toBe('10');
    expect(at('Beams', baseline)).toBe('1');
  });

  it('carry the ± where there is one', () => {
    expect(at('Span, ± (mm)', baseline)).toBe('5');
    expect(at('Span, ± (mm)', candidate)).toBe('');
    expect(Number(at('Stress, greatest, ± (MPa)', baseline))).toBeCloseTo(0.05, 12);
    expect(head).not.toContain('Load, ± (N)');
  });

  it('carry lists, options and absences as harmless text', () => {
    expect(at('Readings, each "lift" (g)', baseline)).toBe('100; 200');
    expect(at('Kind of support', baseline)).toBe('\'=pinned, "both" ends');
    expect(at('Kind of support', candidate)).toBe('fixed');
    expect(at('Span per load (mm)', candidate)).toBe('there is no load');
  });

  it('keep every digit', () => {
    const span = 0.123456789012345;
    const thirds = { ...beamInput, span };
    const exact = resultsCsv(
      beam,
      { candidate: { input: thirds, output: beam.compute(thirds) } },
      'metric',
    );
    const [titles, row] = parse(exact);
    expect(Number(must(row)[must(titles).indexOf('Span (mm)')]) / 1000).toBeCloseTo(span, 15);
    expect(parse(exact)).toHaveLength(2);
  });
});

describe('curves and sweeps', () => {
  it('give each set its own columns', () => {
    const output = beam.compute(beamInput);
    const text = seriesCsv(
      beam,
      'curve',
      {
        baseline: { input: beamInput, output },
        candidate: { input: beamInput, output },
      },
      'metric',
    );
    expect(parse(text)).toEqual([
      [
        'Place, baseline (mm)',
        'Moment, baseline (N·m)',
        'Place, candidate (mm)',
        'Moment, candidate (N·m)',
      ],
      ['0', '0', '0', '0'],
      ['1000', '100', '1000', '100'],
    ]);
    expect(() => seriesCsv(beam, 'stress', {}, 'metric')).toThrow(/no curve/);
  });

  it('leave gaps empty', () => {
    const request = { variable: 'span', output: 'stress', from: -1, to: 1, points: 3 };
    const text = sweepCsv(
      beam,
      request,
      { baseline: sweep(beam, beamInput, request), candidate: sweep(beam, beamInput, request) },
      'metric',
    );
    expect(parse(text)).toEqual([
      ['Span (mm)', 'Stress, greatest, baseline (MPa)', 'Stress, greatest, candidate (MPa)'],
      ['-1000', '', ''],
      ['0', '', ''],
      ['1000', '10', '10'],
    ]);
    expect(() => sweepCsv(beam, { variable: 'kind', output: 'stress' }, {}, 'metric')).toThrow(
      /no sweep/,
    );
  });
});
