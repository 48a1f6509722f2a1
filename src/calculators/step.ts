import type { Kind } from '../units/kinds.ts';

/** Display units by kind for one line; they must be coherent with each other. SI base units otherwise. */
export type LineUnits = Partial<Readonly<Record<Kind, string>>>;

/** How a line is shown, and where its formula stands. */
interface How {
  readonly units?: LineUnits;
  /** Id of a file in content/sources. */
  readonly source?: string;
}

/** Why the model has no formula here. The page says so where the numbers would stand. */
export type Why = 'search' | 'integral' | 'sum over parts' | 'table' | 'balance';

/** A line that is no formula, in TeX; `\q{name}` stands for the symbol of a quantity, its own result among them. */
export interface Tex {
  readonly text: string;
  readonly why: Why;
}

/**
 * One line of the working. `formula` is an expression over input names, output names and the names of earlier
 * steps, in SI. At build it becomes the line of symbols and the line of numbers; a test evaluates it against
 * `compute`, so that the printed formula cannot drift from the code. Only where the model has no formula (a search,
 * an integral) `tex` stands in its place, which no test evaluates.
 *
 * A formula holds numbers, `pi`, + − * / ^, the functions of src/components/working/parse.ts, and as its whole
 * `when(condition, then, otherwise)`, with another `when` in the last place if need be. A condition is
 * `choice == "option"`, `given(input)` of an input that may be left out, `a < b` or `a <= b`.
 */
export interface Working extends How {
  readonly formula?: string;
  readonly tex?: Tex;
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

/** The line of a step for which the model has no formula, printed as it is, and why it has none. */
export function tex(text: string, why: Why): Tex {
  return { text, why };
}

/** The line that works out an output: its formula, and the same in words. */
export function is(formula: string | Tex, say: string, how: How = {}): Working {
  return { ...(typeof formula === 'string' ? { formula } : { tex: formula }), say, ...how };
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
export const unbalance = onTheWay('unbalance');
export const angle = onTheWay('angle');
export const speed = onTheWay('speed');
export const acceleration = onTheWay('acceleration');
export const inertia = onTheWay('inertia');
export const energy = onTheWay('energy');
export const pressure = onTheWay('pressure');
export const temperature = onTheWay('temperature');
export const expansion = onTheWay('expansion');
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
