import type { Kind } from '../units/kinds.ts';
import type { ListEntry, NumberEntry, Origin } from './define.ts';

/**
 * Makers of the dictionary's quantities, one for each way a quantity of the trade is written: its kind, the unit
 * that a bare number has in each system, and the unit of its ranges (the metric one). A quantity then says what
 * is its own: name, symbol, label, ranges, example.
 */

/** Possible from, usual from, usual to, possible to; in the maker's metric unit. */
type Ranges = readonly [least: number, low: number, high: number, most: number];

interface Plain {
  /** What a reader would type in either set; one text where both have the same. */
  readonly demo: string | readonly [baseline: string, candidate: string];
  /** One value serves both sets (a scrubbed angle, a common speed). */
  readonly common?: true;
  readonly optional?: true;
}

interface Measured extends Plain {
  readonly origin: Exclude<Origin, 'choice'>;
  /** The ordinary shop uncertainty (about 2 s), in the unit of the ranges; absent where the value is exact. */
  readonly plusMinus?: number;
}

/** What is decided has no error of measuring. */
interface Chosen extends Plain {
  readonly origin: 'choice';
  readonly plusMinus?: never;
}

type Own = Measured | Chosen;

type Maker = <const N extends string>(
  name: N,
  symbol: string,
  label: string,
  ranges: Ranges,
  own: Own,
) => NumberEntry & { readonly name: N };

function shared(
  [least, low, high, most]: Ranges,
  demo: Own['demo'],
): Pick<NumberEntry, 'hard' | 'usual' | 'demo'> {
  const [baseline, candidate] = typeof demo === 'string' ? [demo, demo] : demo;
  return { hard: [least, most], usual: [low, high], demo: { baseline, candidate } };
}

function quantity(kind: Kind, metric: string, inch = metric): Maker {
  return (name, symbol, label, ranges, { demo, plusMinus, ...rest }) => ({
    type: 'number',
    name,
    label,
    symbol,
    kind,
    metric,
    inch,
    rangeUnit: metric,
    ...shared(ranges, demo),
    ...(plusMinus === undefined ? {} : { usualPlusMinus: plusMinus }),
    ...rest,
  });
}

export const length = quantity('length', 'mm', 'in');
/** Along the car or the shaft of a room: metres. */
export const distance = quantity('length', 'm', 'in');
export const area = quantity('area', 'mm2', 'in2');
export const volume = quantity('volume', 'mm3', 'in3');
/** The trade weighs in grams, wherever it measures in inches. */
export const mass = quantity('mass', 'g');
export const heavyMass = quantity('mass', 'kg', 'lb');
export const density = quantity('density', 'g/cm3', 'lb/in3');
/** Density of a metal as its data sheets have it, in both systems. */
export const metalDensity = quantity('density', 'g/cm3');
/** Grams at a radius: the machine's inch system keeps the grams. */
export const unbalance = quantity('unbalance', 'gmm', 'gin');
export const inertia = quantity('inertia', 'kgm2', 'lbin2');
export const angle = quantity('angle', 'deg');
/** The number of a balance quality grade: millimetres a second in both systems. */
export const gradeSpeed = quantity('speed', 'mm/s');
export const crankSpeed = quantity('angularSpeed', 'rpm');
export const angularAcceleration = quantity('angularAcceleration', 'rad/s2');
/** How fast a crank gains speed, in revolutions a minute each second. */
export const rateOfSpeed = quantity('angularAcceleration', 'rpm/s');
export const force = quantity('force', 'N', 'lbf');
export const load = quantity('force', 'kN', 'lbf');
export const torque = quantity('torque', 'Nm', 'lbft');
/** How hard a shaft is to twist. */
export const torsionalStiffness = quantity('torsionalStiffness', 'kNm/rad', 'lbft/deg');
export const frequency = quantity('frequency', 'Hz');
export const energy = quantity('energy', 'J', 'ftlbf');
export const heatOfFuel = quantity('specificEnergy', 'MJ/kg', 'Btu/lb');
export const pressure = quantity('pressure', 'bar', 'psi');
/** Air pressure and manifold pressure: inches of mercury in the inch system. */
export const airPressure = quantity('pressure', 'kPa', 'inHg');
export const gasPressure = quantity('pressure', 'kPa', 'psi');
export const strength = quantity('pressure', 'MPa', 'ksi');
export const modulus = quantity('pressure', 'GPa', 'Mpsi');
/** Modulus of a metal as its data sheets have it, in both systems. */
export const metalModulus = quantity('pressure', 'GPa');
export const temperature = quantity('temperature', 'degC', 'degF');
export const expansion = quantity('expansion', 'ppm/K', 'ppm/degF');
export const time = quantity('time', 's');
export const ratio = quantity('ratio', 'ratio');
export const percent = quantity('ratio', 'pct');
export const count = quantity('count', 'count');

type ListMaker = <const N extends string>(
  name: N,
  symbol: string,
  label: string,
  ranges: Ranges,
  own: Pick<Own, 'demo' | 'origin' | 'optional'> & { readonly most: number },
) => ListEntry & { readonly name: N };

/** Several of one quantity, typed in one field; at most `most` of them. */
function list(kind: Kind, unit: string): ListMaker {
  return (name, symbol, label, ranges, { demo, ...own }) => ({
    type: 'list',
    name,
    label,
    symbol,
    kind,
    metric: unit,
    inch: unit,
    rangeUnit: unit,
    ...shared(ranges, demo),
    ...own,
  });
}

/* Lists have one unit in both systems, as the trade’s scale has. */

/** Repeated readings of one mass, or one of each part. */
export const weighings = list('mass', 'g');
export const inertias = list('inertia', 'kgm2');
export const torsionalStiffnesses = list('torsionalStiffness', 'kNm/rad');
/** Numbers that only count: of cylinders in an order. */
export const numbers = list('count', 'count');
