import { describe, expect, it } from 'vitest';
import { solveFor } from '../../src/calculators/solve.ts';
import { beam, beamInput, curveOf, refuse } from './tiny.ts';

const show = (_: string, si: number): string => String(Number(si.toPrecision(6)));
const ask = { unknown: 'x', output: 'y' };

function solveCurve(f: (x: number) => number, target: number) {
  return solveFor(curveOf(f), { x: 1 }, { ...ask, target }, show);
}

describe('closed forms', () => {
  it('finds the one value, inside the hard range in SI', () => {
    const answer = solveFor(
      beam,
      beamInput,
      { unknown: 'span', output: 'stress', target: 5e6 },
      show,
    );
    expect(answer.roots).toHaveLength(1);
    expect(answer.roots[0]).toBeCloseTo(0.5, 12);
    expect(answer.maybeMore).toBe(false);
    expect(answer.say).toBe('Span: 0.5 gives 5000000.');
  });

  it('finds both values of a parabola and says how many', () => {
    const { roots, say } = solveCurve((x) => (x - 5) ** 2, 4);
    expect(roots.map((x) => Number(x.toFixed(9)))).toEqual([3, 7]);
    expect(say).toBe('X: 2 values give 4: 3 and 7.');
  });

  it('finds the one place where the target is just touched', () => {
    const { roots } = solveCurve((x) => 2 + (x - 5.03) ** 2, 2);
    expect(roots).toHaveLength(1);
    // A double root is known only to the square root of the precision of the height.
    expect(roots[0]).toBeCloseTo(5.03, 4);
  });

  it('says so where an answer lies outside the usual range', () => {
    expect(solveCurve((x) => x, 9.5).say).toBe(
      'X: 9.5 gives 9.5. Outside the usual range of 1 to 9: 9.5.',
    );
  });
});

describe('no answer', () => {
  it('gives the reachable range', () => {
    const answer = solveCurve((x) => 3 * x, 40);
    expect(answer.roots).toEqual([]);
    expect(answer.reach).toEqual([0, 30]);
    expect(answer.say).toBe(
      'X: no value between 0 and 10 gives 40; there the height runs from about 0 to 30.',
    );
  });

  it('says that the output does not depend on the unknown, even if the target is met', () => {
    const answer = solveFor(
      beam,
      beamInput,
      { unknown: 'modulus', output: 'slenderness', target: 1 },
      show,
    );
    expect(answer.roots).toEqual([]);
    expect(answer.say).toBe('Modulus: the ratio does not depend on it. It is 1 throughout.');
  });

  it('says that nothing computes at all', () => {
    const answer = solveCurve(refuse, 1);
    expect(answer.reach).toBeUndefined();
    expect(answer.say).toContain('no value between 0 and 10 gives a result at all');
  });

  it('does not take a jump through a pole for an answer', () => {
    const answer = solveCurve((x) => 1 / (x - 5.017), 0);
    expect(answer.roots).toEqual([]);
    expect(answer.say).toContain('no value was found');
  });
});

describe('holes', () => {
  it('passes over what is refused and finds what lies beyond', () => {
    const { roots } = solveCurve((x) => (x > 2 && x < 6 ? refuse(x) : x), 8);
    expect(roots).toHaveLength(1);
    expect(roots[0]).toBeCloseTo(8, 12);
  });

  it('finds an answer between the last sample and the edge of the hole', () => {
    const { roots } = solveCurve((x) => (x > 5.01 ? refuse(x) : x), 5.005);
    expect(roots).toHaveLength(1);
    expect(roots[0]).toBeCloseTo(5.005, 12);
  });

  it('searches a hard range that begins outside the domain', () => {
    const answer = solveFor(
      beam,
      { ...beamInput, load: 1 },
      { unknown: 'span', output: 'stress', target: 1e3 },
      show,
    );
    expect(answer.roots).toHaveLength(1);
    expect(answer.roots[0]).toBeCloseTo(0.01, 12);
  });
});

it('says "at least" where the output moves faster than the search', () => {
  const answer = solveCurve((x) => Math.sin(15 * x), 0.9995);
  expect(answer.maybeMore).toBe(true);
  expect(answer.say).toContain('at least');
});

it.each(['beams', 'readings', 'kind', 'missing'])('refuses to look for %s', (unknown) => {
  expect(() => solveFor(beam, beamInput, { unknown, output: 'stress', target: 1 }, show)).toThrow(
    /no input/,
  );
});
