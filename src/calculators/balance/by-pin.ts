import { pinBobweight, type PinParts } from '../../core/balance/bobweight.ts';
import { at } from '../../core/math/at.ts';
import type { Absent } from '../define.ts';
import { matchingOf, pinsOf, type ToMatch } from './matched.ts';

/** One crankpin with the parts that go on it, counted from 1 as they were listed, and its bobweight [kg]. */
export interface ByPin {
  readonly rods: readonly number[];
  readonly pistons: readonly number[];
  /** Of those pistons, in their order; undefined where the wrist pins were not weighed one by one. */
  readonly wristPins: readonly number[] | undefined;
  readonly bobweight: number;
}

function mean(masses: readonly number[]): number {
  return masses.reduce((sum, mass) => sum + mass, 0) / masses.length;
}

/**
 * The bobweight of each crankpin where parts were weighed one by one and go together as they were matched: that of the
 * means of what hangs on the pin, since a bobweight is a sum. What was not weighed one by one has the mass of `parts`.
 *
 * @param parts one cylinder and its pin [kg], as `pinBobweight` takes them
 * @param given the lists [kg], and how they are matched
 * @returns the pins, or why the rods have none
 * @throws OutOfDomain as `pinBobweight` and `matchParts`
 */
export function bobweightsByPin(
  parts: PinParts,
  given: ToMatch & { readonly rodsPerPin: number },
): readonly ByPin[] | Absent {
  const matching = matchingOf(given);
  const pins = pinsOf(given, matching);
  if ('absent' in pins) return pins;
  const { orders } = matching;
  const sets = given.pistonMasses.map((_, set) => set);
  const rodOf = orders.smallEndMasses ?? sets;
  return pins.map(({ rods, total }) => {
    const here = rods.map((rod) => rodOf.indexOf(rod));
    const of = (name: 'pinMasses' | 'smallEndMasses' | 'ringMasses', each: number): number => {
      const list = given[name];
      const order = orders[name] ?? sets;
      return list === undefined ? each : mean(here.map((set) => at(list, at(order, set))));
    };
    // Rings and locks were weighed together, where they were weighed for each piston.
    const rings = of('ringMasses', parts.ringMass + parts.lockMass);
    const { bobweight } = pinBobweight({
      ...parts,
      pistonMass: mean(here.map((set) => at(given.pistonMasses, set))),
      pinMass: of('pinMasses', parts.pinMass),
      smallEndMass: of('smallEndMasses', parts.smallEndMass),
      ringMass: rings,
      lockMass: 0,
      bigEndMass: total / rods.length,
    });
    const { pinMasses: wristPins } = orders;
    return {
      rods: rods.map((rod) => rod + 1),
      pistons: here.map((set) => set + 1),
      wristPins: wristPins && here.map((set) => at(wristPins, set) + 1),
      bobweight,
    };
  });
}
