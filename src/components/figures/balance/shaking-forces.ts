import {
  balanceShafts,
  shaftsOf,
  type BalanceShafts,
} from '../../../calculators/balance/balance-shafts.choices.ts';
import {
  crankLayout,
  isLayout,
  throwsOf,
  type Layout,
} from '../../../calculators/balance/crank-layout.choices.ts';
import { behindShafts, type ShaftsFitted } from '../../../core/balance/balance-shafts.ts';
import { placesOf, type Throw } from '../../../core/balance/crank-throws.ts';
import { carriedWeights } from '../../../core/balance/crank-weights.ts';
import { cylindersOf, type Cylinder } from '../../../core/balance/cylinders.ts';
import {
  shakingAt,
  shakingForces,
  type OrderOfShaking,
  type Shaking,
} from '../../../core/balance/shaking-forces.ts';
import { pathOf, type TurningParts } from '../../../core/balance/turning-parts.ts';
import { length, vectorAt, type Vector } from '../../../core/balance/vectors.ts';
import { twoTermMotion } from '../../../core/motion/two-term-motion.ts';
import { pistonMotion } from '../../../core/motion/piston-motion.ts';
import { numberOf, numbersOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

const names = [
  'reciprocatingMass',
  'reciprocatingFraction',
  'stroke',
  'rodLength',
  'maxSpeed',
  'cylinderSpacing',
] as const;

/** One set’s crank: its throws, its cylinders, and what shakes it bare and behind its counterweights. */
export interface ShakenCrank {
  readonly layout: Layout;
  readonly throws: readonly Throw[];
  readonly cylinders: readonly Cylinder[];
  /** Crank speed [rad/s], throw, rod length and pin spacing [m], and balance factor. */
  readonly maxSpeed: number;
  readonly radius: number;
  readonly rodLength: number;
  readonly spacing: number;
  readonly factor: number;
  /** The balance shafts that `left` has, beside the counterweights. */
  readonly shafts: ShaftsFitted;
  readonly bare: Shaking;
  readonly left: Shaking;
}

/** The crank of a set’s numbers; `undefined` while one is missing. */
export function crankOf(input: FigureSet['input']): ShakenCrank | undefined {
  const layout = input?.[crankLayout.name];
  if (typeof layout !== 'string' || !isLayout(layout)) return undefined;
  const alike = numbersOf(input, names);
  if (alike === undefined) return undefined;
  const own = { ...alike, partnerReciprocating: numberOf(input, 'partnerReciprocating') };
  const shafts = shaftsIn(input?.[balanceShafts.name]);
  const throws = throwsOf(layout);
  const cylinders = cylindersOf(throws, own);
  return {
    layout,
    throws,
    cylinders,
    maxSpeed: own.maxSpeed,
    radius: own.stroke / 2,
    rodLength: own.rodLength,
    spacing: own.cylinderSpacing,
    factor: own.reciprocatingFraction,
    bare: shakingForces(cylinders, own),
    shafts,
    left: behindShafts(shakingForces(cylinders, own, carriedWeights(cylinders, own)), own, shafts),
  };
}

function shaftsIn(choice: unknown): ShaftsFitted {
  const options = Object.keys(balanceShafts.options) as readonly BalanceShafts[];
  return shaftsOf(options.find((one) => one === choice) ?? 'none');
}

/** Of what a path is drawn. */
export type Shaken = keyof OrderOfShaking;

/** The tip of force [N] or couple [N·m], both orders together, at equal steps of a turn. */
export function tipsOf(shaking: Shaking, what: Shaken, steps = 90): readonly Vector[] {
  return Array.from({ length: steps }, (_, i) => {
    const crankAngle = (2 * Math.PI * i) / steps;
    return shakingAt(shaking, { crankAngle })[what].together;
  });
}

/** The longest that a tip can be [N or N·m]. */
export function longestOf({ primary, secondary }: Shaking, what: Shaken): number {
  return pathOf(primary[what]).most + pathOf(secondary[what]).most;
}

/** Where a piston stands and how it pulls, with the crank at an angle. */
export interface Piston {
  readonly cylinder: Cylinder;
  /** [m] Of the wrist pin from the crank’s axis, along the bore. */
  readonly height: number;
  /** [m] Of the crankpin, from the crank’s axis. */
  readonly crankpin: Vector;
  /** [N] Along the bore, positive away from the crank, both orders. */
  readonly pull: number;
}

/** Every piston of a crank at a crank angle [rad]. */
export function pistonsOf(crank: ShakenCrank, crankAngle: number): readonly Piston[] {
  const { radius, rodLength, maxSpeed } = crank;
  return crank.cylinders.map((cylinder) => {
    const psi = crankAngle + cylinder.angle - cylinder.bank;
    const { displacement } = pistonMotion(cylinder, psi, 0);
    return {
      cylinder,
      height: radius + rodLength - displacement,
      crankpin: vectorAt(radius, crankAngle + cylinder.angle),
      pull: cylinder.reciprocatingMass * twoTermMotion(cylinder, psi, maxSpeed).acceleration,
    };
  });
}

/** The pull on the pins at one place along the crank, and that of the counterweights there. */
export interface StationPull {
  /** [m] */
  readonly position: number;
  /** [N] Along the middle of the banks, of pistons and counterweights together. */
  readonly along: number;
}

/** What pulls at each place along the crank, up and down, as it is seen from the side. */
export function stationPulls(
  crank: ShakenCrank,
  pistons: readonly Piston[],
  crankAngle: number,
  balanced: boolean,
): readonly StationPull[] {
  return placesOf(crank.cylinders).map((position) => ({
    position,
    along: pistons
      .filter(({ cylinder }) => cylinder.position === position)
      .reduce((sum, { cylinder, pull }) => {
        const { reciprocatingMass: m, stroke, angle, bank } = cylinder;
        const weight = balanced ? (crank.factor * m * stroke * crank.maxSpeed ** 2) / 2 : 0;
        return sum + pull * Math.cos(bank) - weight * Math.cos(angle + crankAngle);
      }, 0),
  }));
}

/** How far the drawing of a crank reaches from its axis [m], upward and downward and to one side. */
export interface Reach {
  readonly up: number;
  readonly down: number;
  readonly side: number;
}

/** From the crank to above a piston, in throws: room for crown and arrow. */
const above = 1.9;

/** The room that the pistons, the throws and their counterweights of a crank need. */
export function reachOf({ throws, radius, rodLength }: ShakenCrank): Reach {
  const top = radius + rodLength + above * radius;
  const banks = throws.flatMap((one) => one.banks);
  const least = 2.2 * radius;
  return {
    up: Math.max(least, ...banks.map((bank) => top * Math.cos(bank))),
    down: Math.max(least, ...banks.map((bank) => -top * Math.cos(bank))),
    side: Math.max(least, ...banks.map((bank) => Math.abs(top * Math.sin(bank)) + 0.6 * radius)),
  };
}

/** How a force or couple moves: with the crank, against it, along a line, or between two sizes. */
function motionWords(parts: TurningParts, show: (value: number) => string): string {
  const { most, least } = pathOf(parts);
  const [ahead, against] = [length(parts.forward), length(parts.backward)];
  const none = 1e-9 * most;
  if (against <= none) return `of ${show(most)}, rotating with the crank`;
  if (ahead <= none) return `of ${show(most)}, rotating against the crank`;
  if (least <= none) return `of up to ${show(most)}, along one line`;
  return `between ${show(least)} and ${show(most)}`;
}

/** What shakes a crank, in a sentence without its end: primary and secondary, force and couple. */
export function shakingWords(
  shaking: Shaking,
  greatest: Readonly<Record<Shaken, number>>,
  show: Readonly<Record<Shaken, (value: number) => string>>,
): string {
  const said = (['primary', 'secondary'] as const).flatMap((order) =>
    (['force', 'couple'] as const).flatMap((what) => {
      const parts = shaking[order][what];
      // What rounding leaves of nothing is nothing.
      if (pathOf(parts).most <= 1e-9 * greatest[what]) return [];
      return [`a ${order} ${what} ${motionWords(parts, show[what])}`];
    }),
  );
  return said.length === 0 ? 'nothing shakes it, once or twice a turn' : said.join('; ');
}
