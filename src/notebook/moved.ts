import type { SetValues } from './values.ts';

/** A topic that was once a part of another's page. */
export interface Moved {
  readonly from: string;
  readonly to: string;
  /** A quantity that only the part asks for: a link that names it was made while the part stood there. */
  readonly sign: string;
}

/** Links of the page as it was name the quantities of these parts too, and every one of them. */
const moved: readonly Moved[] = [
  { from: 'bobweight', to: 'balance-factor', sign: 'bankAngle' },
  { from: 'bobweight', to: 'quoted-bobweight', sign: 'bobweight' },
  { from: 'bobweight', to: 'residual-unbalance', sign: 'bobweightError' },
  { from: 'rotating-inertia', to: 'inertia-through-gears', sign: 'carMass' },
  { from: 'rotating-inertia', to: 'speed-fluctuation', sign: 'energySwing' },
  { from: 'rotating-inertia', to: 'inertia-by-swinging', sign: 'swingTime' },
];

/** What was once a part of a topic's page. */
export function movedFrom(topic: string): readonly Moved[] {
  return moved.filter(({ from }) => from === topic);
}

/**
 * True where the link of the page `at` has the numbers of the page `here`, which was a part of it then.
 *
 * @param at, here addresses of pages
 * @param values what the link brought
 */
export function bringsNumbersFor(here: string, at: string, values: SetValues): boolean {
  return moved.some(
    ({ from, to, sign }) =>
      at.includes(`/${from}/`) && here.includes(`/${to}/`) && Object.hasOwn(values.baseline, sign),
  );
}
