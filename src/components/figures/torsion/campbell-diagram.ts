import { inStep } from '../../../core/torsion/critical-speeds.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** What a Campbell diagram draws of one set. */
export interface Campbell {
  /** [Hz] The first and the second natural frequency. */
  readonly frequencies: readonly [number, number];
  /** [rad/s] */
  readonly redline: number;
  /** Firings in a turn. */
  readonly firingRate: number;
  /** Of the critical speed nearest to the redline; undefined where there is none. */
  readonly nearOrder: number | undefined;
  /** How far the cylinders are in step, of the first and of the second mode, by order. */
  readonly sums: readonly [ReadonlyMap<number, number>, ReadonlyMap<number, number>];
}

function sumsOf({ output }: FigureSet, name: string): ReadonlyMap<number, number> {
  const curve = output?.[name];
  if (typeof curve !== 'object' || !('x' in curve)) return new Map();
  return new Map(Array.from(curve.x, (order, i) => [order, curve.y[i] ?? 0]));
}

/** The diagram of a set; undefined while it has no result. */
export function campbellOf(set: FigureSet): Campbell | undefined {
  const [first, second, firingRate] = ['firstFrequency', 'secondFrequency', 'firingRate'].map(
    (name) => numberOf(set.output, name),
  );
  const redline = numberOf(set.input, 'maxSpeed');
  if (
    first === undefined ||
    second === undefined ||
    firingRate === undefined ||
    redline === undefined
  )
    return undefined;
  return {
    frequencies: [first, second],
    redline,
    firingRate,
    nearOrder: numberOf(set.output, 'nearOrder'),
    sums: [sumsOf(set, 'firstSums'), sumsOf(set, 'secondSums')],
  };
}

/** The orders that are drawn: those of firing and of twice that, and those of the criticals nearest to a redline. */
export function drawnOrders(sets: readonly Campbell[]): readonly number[] {
  const wanted = sets.flatMap(({ firingRate, nearOrder }) => [
    firingRate,
    2 * firingRate,
    ...(nearOrder === undefined ? [] : [nearOrder]),
  ]);
  return [...new Set(wanted)].sort((a, b) => a - b);
}

/** A crossing of an order with a natural frequency: [rad/s], [Hz], and how far the cylinders are in step. */
export interface Crossing {
  readonly mode: 0 | 1;
  readonly order: number;
  readonly speed: number;
  readonly frequency: number;
  readonly sum: number;
}

/** The crossings of the drawn orders up to a speed [rad/s] at which the cylinders are in step, the fastest first. */
export function crossingsOf(
  { frequencies, sums }: Campbell,
  orders: readonly number[],
  upTo: number,
): readonly Crossing[] {
  const found = ([0, 1] as const).flatMap((mode) =>
    orders.map((order) => ({
      mode,
      order,
      speed: (2 * Math.PI * frequencies[mode]) / order,
      frequency: frequencies[mode],
      sum: sums[mode].get(order) ?? 0,
    })),
  );
  return found
    .filter(({ speed, sum }) => speed <= upTo && sum >= inStep)
    .sort((one, other) => other.speed - one.speed);
}
