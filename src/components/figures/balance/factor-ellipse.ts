import {
  isLayout,
  throwsOf,
  type Layout,
} from '../../../calculators/balance/crank-layout.choices.ts';
import { factorLeft, partsLeft, type PrimaryShaking } from '../../../core/balance/factor-left.ts';
import { partsAt } from '../../../core/balance/turning-parts.ts';
import { scaled, type Vector } from '../../../core/balance/vectors.ts';
import { numbersOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

const names = [
  'reciprocatingFraction',
  'reciprocatingMass',
  'stroke',
  'maxSpeed',
  'cylinderSpacing',
] as const;

/** One set’s crank as its balance factor is drawn. */
export interface FactorOfCrank {
  readonly layout: Layout;
  readonly factor: number;
  /** One cylinder’s primary force [N], and that times the pin spacing [N·m]. */
  readonly unit: PrimaryShaking<number>;
}

/** The crank of a set’s numbers; `undefined` while one is missing. */
export function factorOf(input: FigureSet['input']): FactorOfCrank | undefined {
  const layout = input?.['crankLayout'];
  if (typeof layout !== 'string' || !isLayout(layout)) return undefined;
  const own = numbersOf(input, names);
  if (own === undefined) return undefined;
  const force = (own.reciprocatingMass * own.stroke * own.maxSpeed ** 2) / 2;
  return {
    layout,
    factor: own.reciprocatingFraction,
    unit: { force, couple: force * own.cylinderSpacing },
  };
}

/** What of the primary is drawn. */
export type Left = keyof PrimaryShaking<unknown>;

/** The tip of what a factor leaves [N or N·m], at equal steps of a turn. */
export function tipsLeft(
  { layout, unit }: FactorOfCrank,
  reciprocatingFraction: number,
  what: Left,
  steps = 72,
): readonly Vector[] {
  const parts = partsLeft(throwsOf(layout), { reciprocatingFraction })[what];
  return Array.from({ length: steps }, (_, i) =>
    scaled(partsAt(parts, 1, (2 * Math.PI * i) / steps), unit[what]),
  );
}

/** The greatest and the least that a factor leaves in a turn [N or N·m]. */
export function endsLeft(
  { layout, unit }: FactorOfCrank,
  reciprocatingFraction: number,
  what: Left,
): { readonly most: number; readonly least: number } {
  const { most, least } = factorLeft(throwsOf(layout), { reciprocatingFraction })[what];
  return { most: most * unit[what], least: least * unit[what] };
}
