import { OutOfDomain, above } from '../../src/core/refuse.ts';
import {
  defineCalculator,
  type ListEntry,
  type NumberEntry,
} from '../../src/calculators/define.ts';
import type { Kind } from '../../src/units/kinds.ts';

/** A dictionary entry for tests; `hard` and `usual` in `unit`. */
export function entry<const N extends string>(
  name: N,
  kind: Kind,
  unit: string,
  hard: readonly [number, number],
  usual: readonly [number, number] = hard,
): NumberEntry & { readonly name: N } {
  return {
    type: 'number',
    name,
    label: name.charAt(0).toUpperCase() + name.slice(1),
    symbol: name.charAt(0),
    kind,
    metric: unit,
    inch: unit,
    rangeUnit: unit,
    hard,
    usual,
    origin: 'part',
    demo: { baseline: `1 ${unit}`, candidate: `2 ${unit}` },
  };
}

/** What a declaration needs beside its inputs and its arithmetic. */
export const bare = {
  title: 'Tiny',
  purpose: 'Serves a test.',
  steps: {},
  limits: [],
  validity: [],
  assumptions: [],
  cautions: [],
  sources: [],
} as const;

const readings: ListEntry & { readonly name: 'readings' } = {
  type: 'list',
  name: 'readings',
  label: 'Readings, each "lift"',
  symbol: 'r_i',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 1000],
  usual: [100, 200],
  most: 8,
  origin: 'part',
  demo: { baseline: '1 g', candidate: '2 g' },
};

/**
 * A beam: load times span over a modulus, plus what shows every kind of output and input. Span must be
 * greater than zero; the ratio has no value without a load.
 */
export const beam = defineCalculator({
  ...bare,
  id: 'beam',
  inputs: {
    load: { ...entry('load', 'force', 'N', [-1000, 1000], [10, 500]), common: true },
    span: entry('span', 'length', 'mm', [-50, 5000], [100, 2000]),
    modulus: entry('modulus', 'volume', 'cm3', [1, 100], [2, 50]),
    beams: entry('beams', 'count', 'count', [1, 9], [1, 4]),
    readings,
    kind: {
      type: 'choice',
      name: 'kind',
      label: 'Kind of support',
      symbol: 'k',
      options: { pinned: '=pinned, "both" ends', fixed: 'fixed' },
      demo: { baseline: 'pinned', candidate: 'fixed' },
    },
  },
  outputs: {
    stress: {
      type: 'number',
      kind: 'pressure',
      metric: 'MPa',
      inch: 'MPa',
      label: 'Stress, greatest',
      symbol: 'σ',
      phrase: 'the stress',
      main: true,
    },
    slenderness: {
      type: 'number',
      kind: 'ratio',
      label: 'Ratio',
      symbol: 's',
      phrase: 'The ratio',
    },
    perLoad: {
      type: 'maybe',
      kind: 'length',
      label: 'Span per load',
      symbol: 'p',
      phrase: 'The span per load',
    },
    curve: {
      type: 'series',
      label: 'Moment',
      x: { label: 'Place', symbol: 'x', kind: 'length' },
      y: { label: 'Moment', symbol: 'M', kind: 'torque' },
    },
  },
  compute: ({ load, span, modulus, beams }) => {
    above({ span }, 'span');
    return {
      stress: (load * span) / modulus / beams,
      slenderness: span,
      perLoad: load === 0 ? { absent: 'there is no load' } : span / load,
      curve: { x: [0, span], y: [0, load * span] },
    };
  },
  sweep: { input: 'span', output: 'stress' },
  solve: { input: 'span', output: 'stress' },
  exercise: { ask: 'stress', tolerance: 0.01 },
});

export const beamInput = {
  load: 100,
  span: 1,
  modulus: 10e-6,
  beams: 1,
  readings: [0.1, 0.2],
  kind: 'pinned',
} as const;

/** A calculator of one continuous input `x` (0 to 10) and one output `y`. */
export function curveOf(f: (x: number) => number) {
  return defineCalculator({
    ...bare,
    id: 'curve',
    inputs: { x: entry('x', 'ratio', 'ratio', [0, 10], [1, 9]) },
    outputs: { y: { type: 'number', kind: 'ratio', label: 'Height', symbol: 'y' } },
    compute: ({ x }) => ({ y: f(x) }),
    sweep: { input: 'x', output: 'y' },
    solve: { input: 'x', output: 'y' },
    exercise: { ask: 'y', tolerance: 0.01 },
  });
}

/** Refuses as `core` does. */
export function refuse(value: number): never {
  throw new OutOfDomain('x', value, 'less than', 0);
}
