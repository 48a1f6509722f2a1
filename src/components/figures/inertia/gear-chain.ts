import { laidEndToEnd, type BarSegment } from '../parts/stacked-bars.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** One gear of one set: inertia [kg·m²], ratios, rolling radius [m], and all on the road as mass [kg]. */
export interface GearChain {
  readonly engineInertia: number;
  readonly gear: number;
  readonly final: number;
  readonly tyre: number;
  readonly car: number;
  readonly wheels: number;
  /** Without loss, and what it counts for while it drives and while it is driven. */
  readonly engine: number;
  readonly driving: number;
  readonly overrun: number;
}

/** The chain of one set; `undefined` while a number is missing. */
export function gearChain({ input, output }: FigureSet): GearChain | undefined {
  const found = {
    engineInertia: numberOf(input, 'engineInertia'),
    gear: numberOf(input, 'gearRatio'),
    final: numberOf(input, 'finalDrive'),
    tyre: numberOf(input, 'tyreRadius'),
    car: numberOf(input, 'carMass'),
    wheels: numberOf(output, 'wheelMass'),
    engine: numberOf(output, 'equivalentMass'),
    driving: numberOf(output, 'drivingMass'),
    overrun: numberOf(output, 'overrunMass'),
  };
  return Object.values(found).includes(undefined) ? undefined : (found as GearChain);
}

/** What must be sped up, as mass on the road, the engine first: laid end to end. */
export function roadSegments({ engine, wheels, car }: GearChain): readonly BarSegment[] {
  return laidEndToEnd([
    { label: 'engine', value: engine, quantity: 'engineInertia equivalentMass' },
    { label: 'four wheels', value: wheels, quantity: 'wheelInertia wheelMass' },
    { label: 'car', value: car, quantity: 'carMass' },
  ]);
}

/** All of it [kg]. */
export function roadTotal({ engine, wheels, car }: GearChain): number {
  return engine + wheels + car;
}

/** How often the crank turns while a wheel turns once. */
export function crankTurns({ gear, final }: GearChain): number {
  return gear * final;
}

/** Pitch radii of two gears whose axes lie `apart`: the driving one turns `ratio` times as fast. */
export function pitchRadii(ratio: number, apart: number): readonly [number, number] {
  return [apart / (1 + ratio), (apart * ratio) / (1 + ratio)];
}

/** A chain as it is drawn, seen along its shafts, in drawing units; the three shafts lie on one level. */
export interface ChainCircles {
  /** Where the shafts of engine, gearbox and wheel stand. */
  readonly shafts: readonly [number, number, number];
  readonly engine: number;
  readonly gears: readonly [number, number];
  readonly finals: readonly [number, number];
  readonly tyre: number;
}

/** Of a chain that is 380 units wide. */
const drawn = { width: 380, left: 48, gears: 92, finals: 72, engine: 40, tyre: 88 } as const;

/**
 * A chain in a drawing `width` units wide. Gears are drawn to their ratios and tyres to their radii. The engine is drawn
 * as a plain disc of one metal and thickness, whose inertia goes with the fourth power of its radius.
 *
 * @param all both chains, of which the larger tyre and the larger inertia fill their room
 */
export function chainCircles(
  own: GearChain,
  all: readonly GearChain[],
  width: number,
): ChainCircles {
  const unit = width / drawn.width;
  const most = (of: (chain: GearChain) => number): number => Math.max(1e-9, ...all.map(of));
  // A gear that drives one smaller than itself needs more room than the engine.
  const widest = Math.max(...all.map(({ gear }) => pitchRadii(gear, drawn.gears * unit)[0]));
  const first = Math.max(drawn.left * unit, widest + 2);
  const second = first + drawn.gears * unit;
  return {
    shafts: [first, second, second + drawn.finals * unit],
    engine:
      drawn.engine * unit * (own.engineInertia / most((chain) => chain.engineInertia)) ** 0.25,
    gears: pitchRadii(own.gear, drawn.gears * unit),
    finals: pitchRadii(own.final, drawn.finals * unit),
    tyre: (drawn.tyre * unit * own.tyre) / most((chain) => chain.tyre),
  };
}

/** How far the circles of all chains reach above and below the level of the shafts. */
export function chainReach(circles: readonly ChainCircles[]): number {
  return Math.max(
    1,
    ...circles.flatMap(({ engine, gears, finals, tyre }) => [engine, ...gears, ...finals, tyre]),
  );
}
