import type { Kind } from '../units/kinds.ts';

/** Display units by kind for one line; they must be coherent with each other. SI base units otherwise. */
export type LineUnits = Partial<Readonly<Record<Kind, string>>>;

/** How a line is shown, and where its formula stands. */
interface How {
  readonly units?: LineUnits;
  /** Id of a file in content/sources. */
  readonly source?: string;
}

/**
 * One line of the working. `formula` is an expression over input names, output names and the names of earlier
 * steps, in SI. At build it becomes the line of symbols and the line of numbers; a test evaluates it against
 * `compute`, so that the printed formula cannot drift from the code. A step that is no expression (a search, an
 * integral) gives `tex` instead and shows no numbers.
 */
export interface Working extends How {
  readonly formula?: string;
  readonly tex?: string;
  /** The formula in words. */
  readonly say: string;
}

/** A value on the way, which is no output: it brings its own symbol and kind. */
export interface OnTheWay extends Working {
  readonly symbol: string;
  readonly kind: Kind;
}

/** A line with the name of what it works out. */
export interface Step extends Working {
  readonly of: string;
  readonly symbol?: string;
  readonly kind?: Kind;
}

/** A formula that is no expression, in TeX; `\q{name}` stands for the symbol of a quantity. */
interface Tex {
  readonly tex: string;
}

/** The formula of a search or an integral, printed as it is and shown without numbers. */
export function tex(text: string): Tex {
  return { tex: text };
}

/** The line that works out an output: its formula, and the same in words. */
export function is(formula: string | Tex, say: string, how: How = {}): Working {
  return { ...(typeof formula === 'string' ? { formula } : formula), say, ...how };
}

function onTheWay(kind: Kind) {
  return (symbol: string, formula: string | Tex, say: string, how?: How): OnTheWay => ({
    symbol,
    kind,
    ...is(formula, say, how),
  });
}

/* The line that works out a value on the way, by its kind. */
export const length = onTheWay('length');
export const area = onTheWay('area');
export const volume = onTheWay('volume');
export const secondMoment = onTheWay('secondMoment');
export const mass = onTheWay('mass');
export const inertia = onTheWay('inertia');
export const angle = onTheWay('angle');
export const angularSpeed = onTheWay('angularSpeed');
export const speed = onTheWay('speed');
export const acceleration = onTheWay('acceleration');
export const force = onTheWay('force');
export const torque = onTheWay('torque');
export const energy = onTheWay('energy');
export const pressure = onTheWay('pressure');
export const temperature = onTheWay('temperature');
export const time = onTheWay('time');
export const ratio = onTheWay('ratio');
export const count = onTheWay('count');

/** Sets of units in which lines of the working are shown. */
export const grams = { mass: 'g' } as const;
export const millimetres = {
  length: 'mm',
  area: 'mm2',
  volume: 'mm3',
  secondMoment: 'mm4',
  force: 'N',
  pressure: 'MPa',
} as const;
