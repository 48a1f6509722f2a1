import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { levelAfter, linesShown } from '../../../src/calculators/practice/fade.ts';
import { traceWorking } from '../../../src/calculators/practice/trace.ts';
import { wayTo, workWay, type Line } from '../../../src/calculators/practice/way.ts';

/** r = S/2, a = r·w², F = m·a; and a line that leads elsewhere. */
const lines: readonly Line[] = [
  { of: 'r', postfix: '=S 2 /', uses: ['S'] },
  { of: 'ratio', postfix: '=r =L /', uses: ['r', 'L'] },
  { of: 'a', postfix: '=r =w 2 ^ *', uses: ['r', 'w'] },
  { of: 'F', postfix: '=m =a *', uses: ['m', 'a'] },
];
const values = { S: 0.08, w: 500, m: 0.5, L: 0.15 };
const way = wayTo('F', lines);
const right = { r: 0.04, a: 10_000, F: 5000 };

describe('the way to a result', () => {
  it('is what leads to it, in order', () => {
    expect(way.map(({ of }) => of)).toEqual(['r', 'a', 'F']);
    expect(wayTo('ratio', lines).map(({ of }) => of)).toEqual(['r', 'ratio']);
    expect(wayTo('nothing', lines)).toEqual([]);
  });

  it('is worked on the values before it', () => {
    expect(workWay(way, values)).toMatchObject(right);
    expect(workWay(way, values, { r: 0.08 })).toMatchObject({ r: 0.08, a: 20_000, F: 10_000 });
  });
});

describe('a working that is followed', () => {
  const trace = (given: Readonly<Record<string, number>>) => traceWorking(way, values, given, 0.01);

  it('asks for the first value that is not given, and then for the next', () => {
    expect(trace({ F: 9000 })).toMatchObject({ next: 'r', earned: false });
    expect(trace({ F: 9000, r: 0.04 })).toMatchObject({ next: 'a', lines: { r: 'right' } });
    expect(trace({ F: 9000, r: 0.04, a: 10_000 })).not.toHaveProperty('next');
  });

  it('stops at the first that differs', () => {
    const found = trace({ F: 9000, r: 0.08 });
    expect(found).toMatchObject({
      differs: 'r',
      lines: { r: 'differs', F: 'differs' },
      earned: false,
    });
    expect(found).not.toHaveProperty('next');
  });

  it('earns the part that is right for a wrong value before it', () => {
    expect(trace({ r: 0.08, F: 10_000 })).toMatchObject({
      differs: 'r',
      lines: { r: 'differs', F: 'follows' },
      earned: true,
    });
    expect(trace({ r: 0.08, a: 20_000, F: 10_000 }).lines).toEqual({
      r: 'differs',
      a: 'follows',
      F: 'follows',
    });
  });

  it('finds the last line where all before it are right', () => {
    const found = trace({ r: 0.04, a: 10_000, F: 9000 });
    expect(found.lines).toEqual({ r: 'right', a: 'right', F: 'differs' });
    expect(found).not.toHaveProperty('differs');
  });

  it('allows a value what an answer is allowed', () => {
    expect(trace({ r: 0.0403 }).lines).toEqual({ r: 'right' });
    expect(trace({ r: 0.0405 }).lines).toEqual({ r: 'differs' });
  });

  test('a slip at one value leaves all after it earned', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.05, max: 30, noNaN: true }), (factor) => {
        const r = right.r * factor;
        const worked = workWay(way, values, { r });
        const found = trace({ r, a: Number(worked['a']), F: Number(worked['F']) });
        expect(found).toMatchObject({ differs: 'r', earned: true });
      }),
    );
  });
});

describe('the working that is shown', () => {
  it('fades by one line, by two, and is gone', () => {
    expect([0, 1, 2, 3].map((level) => linesShown(level as 0, 7))).toEqual([0, 6, 5, 0]);
    expect(linesShown(2, 1)).toBe(0);
  });

  it('goes on after success and back after a miss, and stays within its ends', () => {
    expect([0, 1, 2, 3].map((level) => levelAfter(level as 0, true))).toEqual([1, 2, 3, 3]);
    expect([0, 1, 2, 3].map((level) => levelAfter(level as 0, false))).toEqual([0, 0, 1, 2]);
  });
});
