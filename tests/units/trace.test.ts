import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../src/core/math/random.ts';
import { readTrace, type Trace } from '../../src/units/trace.ts';

/** A made-up pressure [bar] over the crank angle [degrees from firing TDC], with its top at 14°. */
function bar(at: number): number {
  const turn = ((((at + 180) % 720) + 720) % 720) - 180;
  return 1 + 59 * Math.exp(-(((turn - 14) / 30) ** 2));
}

interface Shape {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** Where firing TDC stands on the angle column. */
  readonly firing: number;
}
const usual: Shape = { from: 0, to: 720, step: 1, firing: 360 };

function points({ from, to, step, firing }: Shape): [number, number][] {
  const many = Math.round((to - from) / step);
  return Array.from({ length: many + 1 }, (_, i) => {
    const at = from + i * step;
    return [at, bar(at - firing)];
  });
}

function must(reading: ReturnType<typeof readTrace>): Trace {
  if (!reading.ok) throw new Error(reading.say);
  return reading;
}

function text(
  rows: readonly (readonly [number, number])[],
  heading = 'angle;pressure bar',
): string {
  return [heading, ...rows.map(([at, p]) => `${at};${p.toFixed(4)}`)].join('\n');
}

/** The trace is the made-up one: greatest miss over the whole cycle below `allowed` bar. */
function agrees(trace: Trace, allowed = 0.05): void {
  let worst = 0;
  trace.angle.forEach((θ, i) => {
    worst = Math.max(worst, Math.abs((trace.pressure[i] ?? 0) / 1e5 - bar((θ * 180) / Math.PI)));
  });
  expect(worst).toBeLessThan(allowed);
}

describe('a trace is read whatever it looks like', () => {
  const rows = points(usual);
  const comma = (value: number): string => value.toFixed(4).replace('.', ',');
  test.each<readonly [string, string]>([
    ['semicolons and points', text(rows)],
    [
      'semicolons and commas',
      ['angle;pressure bar', ...rows.map(([a, p]) => `${a};${comma(p)}`)].join('\r\n'),
    ],
    [
      'tabs and commas',
      ['angle\tpressure bar', ...rows.map(([a, p]) => `${comma(a)}\t${comma(p)}`)].join('\n'),
    ],
    [
      'commas and points',
      ['angle,pressure bar', ...rows.map(([a, p]) => `${a},${p.toFixed(4)}`)].join('\n'),
    ],
    ['white space', ['angle bar', ...rows.map(([a, p]) => ` ${a}   ${p.toFixed(4)} `)].join('\n')],
    [
      'pressure first',
      ['p (bar);crank angle (deg)', ...rows.map(([a, p]) => `${p};${a}`)].join('\n'),
    ],
    ['kilopascal', ['angle;p [kPa]', ...rows.map(([a, p]) => `${a};${p * 100}`)].join('\n')],
    ['megapascal', ['angle;p [MPa]', ...rows.map(([a, p]) => `${a};${p / 10}`)].join('\n')],
    ['psi', ['angle;p psi', ...rows.map(([a, p]) => `${a};${p / 0.06894757293168361}`)].join('\n')],
    [
      'psia',
      ['angle;p (psia)', ...rows.map(([a, p]) => `${a};${p / 0.06894757293168361}`)].join('\n'),
    ],
    [
      'a line of units under the names',
      ['angle;pressure\ndeg;bar', ...rows.map(([a, p]) => `${a};${p}`)].join('\n'),
    ],
    [
      'lines of words above',
      ['bench 3, run 12\n\nangle;pressure bar', ...rows.map(([a, p]) => `${a};${p}`)].join('\n'),
    ],
    [
      'a column of time between',
      ['time ms;angle deg;p bar', ...rows.map(([a, p]) => `${a * 0.03};${a};${p}`)].join('\n'),
    ],
    [
      'quotes and a mark of the byte order',
      `\uFEFF"angle";"bar"\n${rows.map(([a, p]) => `"${a}";"${p}"`).join('\n')}`,
    ],
    ['−360 to 360', text(points({ from: -360, to: 360, step: 0.5, firing: 0 }))],
    ['−180 to 540', text(points({ from: -180, to: 540, step: 1, firing: 0 }))],
    ['0 to 719', text(points({ ...usual, to: 719 }))],
    ['0 to 720 with firing at 0', text(points({ ...usual, firing: 0 }))],
    ['0 to 720 counted from BDC', text(points({ ...usual, firing: 180 }))],
    ['0.1° steps', text(points({ ...usual, step: 0.1 }))],
  ])('%s', (_, typed) => {
    agrees(must(readTrace(typed)));
  });

  test('without a heading, the unit chosen beside the field', () => {
    const bare = rows.map(([a, p]) => `${p}\t${a}`).join('\n');
    agrees(must(readTrace(bare, 'bar')));
    expect(readTrace(bare)).toMatchObject({ ok: false, say: /does not say the unit/u });
  });

  test('several cycles are averaged, and their peaks give a spread', () => {
    const random = seededRandom(7);
    const scales = Array.from({ length: 40 }, () => 1 + 0.1 * (random() - 0.5));
    const many = scales.flatMap((scale) =>
      points({ ...usual, to: 719 }).map(([a, p]) => [a, 1 + (p - 1) * scale] as [number, number]),
    );
    const trace = must(readTrace(text(many)));
    expect(trace.cycles).toBe(40);
    const mean = scales.reduce((sum, one) => sum + one, 0) / 40;
    const spread = Math.sqrt(scales.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 39) / mean;
    expect(Math.abs((trace.peakSpread ?? 0) - spread)).toBeLessThan(0.03 * spread);
    expect(Math.max(...trace.pressure) / 1e5).toBeCloseTo(1 + 59 * mean, 1);
    expect(must(readTrace(text(rows))).peakSpread).toBeUndefined();
  });
});

describe('what is wrong with it is said', () => {
  const rows = points(usual);
  const say = (typed: string): string => must(readTrace(typed)).report.join(' ');
  test('a gap that can be bridged', () => {
    const gap = rows.filter(([at]) => at < 500 || at > 512);
    expect(say(text(gap))).toMatch(/1 gap, the widest 14°: bridged/u);
    agrees(must(readTrace(text(gap))));
  });
  test('noise, and none where there is none', () => {
    const random = seededRandom(3);
    const noisy = rows.map(([at, p]) => [at, p + 2 * (random() - 0.5)] as [number, number]);
    expect(say(text(noisy))).toMatch(/noisy: about 0\.\d+ bar/u);
    expect(say(text(rows))).not.toMatch(/noisy|gap|left out|zero/u);
  });
  test('lines that are no numbers', () => {
    expect(say(text(rows).replace('100;', 'pause;'))).toMatch(/1 line was left out/u);
  });
  test('an angle that goes back', () => {
    const twice = [...rows.slice(0, 50), ...rows.slice(45)];
    expect(say(text(twice))).toMatch(/5 points were left out: the angle did not rise/u);
  });
  test('a zero of the angle that cannot be right', () => {
    expect(say(text(points({ ...usual, firing: 300 })))).toMatch(/46° before the dead centre/u);
    expect(say(text(rows))).not.toMatch(/Check the zero/u);
  });
  test('pressure below zero', () => {
    expect(say(text(rows.map(([at, p]) => [at, p - 3])))).toMatch(/not absolute/u);
  });
});

describe('what is no cycle is refused in words', () => {
  const rows = points(usual);
  test.each<readonly [string, string, RegExp]>([
    ['nothing', '   \n \n', /no text/u],
    ['prose', 'the engine ran well on Tuesday', /No two columns|No line/u],
    ['one column', rows.map(([, p]) => String(p)).join('\n'), /No two columns/u],
    ['half a cycle', text(rows.filter(([at]) => at < 400)), /not a whole cycle of 720°/u],
    ['one turn', text(points({ ...usual, to: 360 })), /not a whole cycle/u],
    ['radians', text(rows.map(([a, p]) => [(a * Math.PI) / 180, p])), /look like radians/u],
    [
      'a wide gap',
      text(rows.filter(([at]) => at < 340 || at > 380)),
      /More than 20° cannot be bridged/u,
    ],
    ['too few points', text(points({ ...usual, step: 10 })), /at least 90/u],
    [
      'commas for everything',
      rows.map(([a, p]) => `${a},0,${p.toFixed(2).replace('.', ',')}`).join('\n'),
      /commas mark decimals/u,
    ],
    [
      'two unnamed columns beside the angle',
      rows.map(([a, p]) => `${a};${p};${p}`).join('\n'),
      /Name it in the heading/u,
    ],
    ['no angle', rows.map(([, p]) => `${p};${p}`).join('\n'), /crank angle was not found/u],
    ['far too long', '0;1\n'.repeat(200_001), /200 000 lines/u],
  ])('%s', (_, typed, words) => {
    const reading = readTrace(typed, 'bar');
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.say).toMatch(words);
  });

  test('junk never throws and never gives a number that is none', () => {
    const piece = fc.constantFrom(
      '1',
      '-2,5',
      '3.5e2',
      ';',
      '\t',
      ',',
      ' ',
      '\n',
      'bar',
      'angle',
      '°',
      'NaN',
      '"',
      '−4',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 400 }), (pieces) => {
        const reading = readTrace(pieces.join(''));
        if (reading.ok) expect(reading.pressure.every(Number.isFinite)).toBe(true);
        else expect(reading.say).toMatch(/\.$/u);
      }),
    );
  });
});
