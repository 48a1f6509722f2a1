import type { ListField, NumberField } from '../units/field.ts';
import type { Kind } from '../units/kinds.ts';
import type { Exercises } from './practice/declare.ts';
import type { OnTheWay, Step, Working } from './step.ts';

/** The two sets a reader lays side by side: what came out, and what goes in. */
export type SetId = 'baseline' | 'candidate';

/**
 * Where a number comes from, and so whether an error in it is one error for both sets or two:
 * - `part`: measured on each set's own part. Two errors.
 * - `thing`: a thing that both sets have (a bore, a scale, a fuel) as long as both have the same number. One
 *   error then; two where the numbers differ, for then there are two things.
 * - `assumption`: estimated for both in the same way, so that it errs alike in both. One error.
 * - `choice`: decided, not measured (a speed limit, a margin). It has no error of measuring; a ± that the
 *   reader gives it all the same is taken as one.
 */
export type Origin = 'part' | 'thing' | 'assumption' | 'choice';

/**
 * A quantity of the dictionary: entered once, carried to every calculator that picks it. `demo` is text as a
 * reader would type it.
 */
export interface NumberEntry extends NumberField {
  /** The dictionary key; the same word in storage, link, file and code. */
  readonly name: string;
  /** Plain-text symbol; `_` starts a subscript that runs to the end: `m_piston`. */
  readonly symbol: string;
  readonly origin: Origin;
  readonly demo: Readonly<Record<SetId, string>>;
  /** The ordinary shop uncertainty (about 2 s), in `rangeUnit`; absent where the value is exact. */
  readonly usualPlusMinus?: number;
  /** One value serves both sets (a scrubbed angle, a common speed). Stored with the baseline. */
  readonly common?: true;
  readonly optional?: true;
}

/** Several readings of one quantity in one field, separated by semicolons. */
export interface ListEntry extends ListField {
  readonly name: string;
  readonly symbol: string;
  readonly origin: Origin;
  readonly demo: Readonly<Record<SetId, string>>;
  readonly optional?: true;
}

/** What a reader may write in place of an option, where none of them serves. */
export interface WrittenChoice {
  /** What it is called in the list of options. */
  readonly label: string;
  /** True for a text that was written so, whether it can be used or not. */
  isOne(text: string): boolean;
  /** Why it cannot be used, in a sentence; undefined for one that can. */
  problemOf(text: string): string | undefined;
  /** The text in short. */
  say(text: string): string;
  /** The text to begin with, from what was chosen before. */
  startFrom(chosen: string): string;
}

/** One of a few named options. */
export interface ChoiceEntry<O extends string = string> {
  readonly type: 'choice';
  readonly name: string;
  readonly label: string;
  readonly symbol: string;
  readonly options: Readonly<Record<O, string>>;
  readonly demo: Readonly<Record<SetId, O>>;
  readonly written?: WrittenChoice;
  readonly common?: true;
  readonly optional?: true;
}

export type Entry = NumberEntry | ListEntry | ChoiceEntry;
export type Value = number | readonly number[] | string | undefined;

/** Marks a quantity that a calculator can do without. */
export function optional<E extends Entry>(entry: E): E & { readonly optional: true } {
  return { ...entry, optional: true };
}

type InputValue<E> = E extends { readonly type: 'number' }
  ? number
  : E extends { readonly type: 'list' }
    ? readonly number[]
    : E extends { readonly type: 'choice'; readonly written: WrittenChoice }
      ? string
      : E extends { readonly type: 'choice'; readonly options: infer Options }
        ? keyof Options & string
        : never;

type Flatten<T> = { readonly [K in keyof T]: T[K] };

/** What `compute` receives: SI numbers, lists and choices; optional ones may be absent. */
export type Input<I extends Record<string, Entry>> = Flatten<
  {
    [K in keyof I as I[K] extends { readonly optional: true } ? never : K]: InputValue<I[K]>;
  } & {
    [K in keyof I as I[K] extends { readonly optional: true } ? K : never]?:
      InputValue<I[K]> | undefined;
  }
>;

/** A number, shown in the results table. */
export interface NumberOutput {
  readonly type: 'number';
  readonly label: string;
  readonly symbol: string;
  readonly kind: Kind;
  /** Unit ids where the kind's defaults do not serve (an unbalance in g·mm, a speed in ft/min). */
  readonly metric?: string;
  readonly inch?: string;
  /** Begins a sentence of the plain-words paragraph: "The bobweight". Outputs without one stay silent. */
  readonly phrase?: string;
  /** The main result of the calculator: set large, shown first. */
  readonly main?: true;
  /** The dictionary quantity that this result fills on other pages, once it is worked from the reader’s own numbers. */
  readonly carries?: string;
  /** Shown beside the value as multiples of standard gravity. */
  readonly alsoGravity?: true;
  /** An angle that is a direction: two differ by the shorter way round, and neither is a multiple of the other. */
  readonly direction?: true;
}

/** A number that may not exist for these inputs; then its reason stands in its place. */
export interface MaybeOutput extends Omit<NumberOutput, 'type'> {
  readonly type: 'maybe';
}

/** A curve, for figures and CSV. Never shown as a number. */
export interface SeriesOutput {
  readonly type: 'series';
  readonly label: string;
  readonly x: { readonly label: string; readonly symbol: string; readonly kind: Kind };
  readonly y: { readonly label: string; readonly symbol: string; readonly kind: Kind };
}

export type OutputEntry = NumberOutput | MaybeOutput | SeriesOutput;
export interface Series {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}
export interface Absent {
  readonly absent: string;
}
export type Result = number | Absent | Series;

export type Output<O extends Record<string, OutputEntry>> = {
  readonly [K in keyof O]: O[K] extends { readonly type: 'number' }
    ? number
    : O[K] extends { readonly type: 'maybe' }
      ? number | Absent
      : Series;
};

/**
 * Refuses keys that were computed but not declared: TypeScript does not do so on a callback's result. The
 * sentence is what its message then ends with; it is wrapped, since a number that were text too would be `never`.
 */
type Exact<R, O> = R & {
  readonly [K in Exclude<keyof R, keyof O> & string]: {
    readonly mistake: `compute returns “${K}”: declare it in outputs, or do not return it`;
  };
};

/** Refuses the name of a step that is no output and brings no symbol and kind of its own. */
type Named<S, O> = string extends keyof S
  ? unknown
  : {
      readonly [
        K in keyof S & string as K extends keyof O ? never : S[K] extends OnTheWay ? never : K
      ]: `“${K}” is no output: correct the name, or make the step with a symbol and a kind`;
    };

/** A statement about the model's range that the page repeats beside the result when it does not hold. */
export interface Limit<In, Out> {
  readonly id: string;
  holds(input: In, output: Out): boolean;
  readonly say: string;
}

/**
 * One strip of validity: an axis on which the model can be placed, and where on it a value can be at all. Where
 * published cases stand on it is read from the checks when the pages are built.
 */
export interface Validity<In, Out> {
  readonly id: string;
  readonly label: string;
  readonly symbol: string;
  readonly kind: Kind;
  /** Unit ids where the kind's defaults do not serve. */
  readonly metric?: string;
  readonly inch?: string;
  of(input: In, output: Out): number;
  readonly possible: readonly [number, number];
  /** Results that alone belong on this axis: a case that prints none of them does not stand on it. */
  readonly by?: readonly (keyof Out & string)[];
}

export interface Both<In, Out> {
  readonly baseline: { readonly input: In; readonly output: Out };
  readonly candidate: { readonly input: In; readonly output: Out };
}

export interface Calculator<
  I extends Record<string, Entry>,
  O extends Record<string, OutputEntry>,
  C extends Record<string, NumberOutput | MaybeOutput>,
> {
  readonly id: string;
  readonly title: string;
  /** One sentence: what it answers. */
  readonly purpose: string;
  /** Computed once the keys are quiet instead of at every key: for a model that takes longer than a frame. */
  readonly pace?: 'idle';
  /** The numbers that the question turns on, at most six: open on the sheet, where all others are folded. */
  readonly asks: readonly (keyof I & string)[];
  /** The results that answer it, at most six, in the order of reading: the rest is folded. */
  readonly answers: readonly (keyof O & string)[];
  readonly inputs: I;
  readonly outputs: O;
  compute(input: Input<I>): Output<O>;
  /** Results that need both sets (the speed at which the candidate reaches the baseline's load). */
  readonly comparisons?: C;
  compare?(both: Both<Input<I>, Output<O>>): {
    readonly [K in keyof C]: number | Absent;
  };
  readonly steps: readonly Step[];
  readonly limits: readonly Limit<Input<I>, Output<O>>[];
  readonly validity: readonly Validity<Input<I>, Output<O>>[];
  /** What the model assumes and what it leaves out, each with what that costs. */
  readonly assumptions: readonly string[];
  /** Ids of content/cautions.yaml. */
  readonly cautions: readonly string[];
  /** Ids of content/sources.yaml. */
  readonly sources: readonly string[];
  /** The sweep the page opens with: an input and an output. */
  readonly sweep: { readonly input: keyof I & string; readonly output: keyof O & string };
  /** The solve-for the page opens with: an input to find and an output to reach. */
  readonly solve: { readonly input: keyof I & string; readonly output: keyof O & string };
  /** What a reader practises: a number to work out first, and what else is asked. */
  readonly exercise: Exercises<keyof I & string, keyof O & string>;
}

/** Gives a declaration its types; checks at compile time that `compute` returns what is declared. */
export function defineCalculator<
  const I extends Record<string, Entry>,
  const O extends Record<string, OutputEntry>,
  R extends NoInfer<Output<O>>,
  S extends Readonly<Record<string, Working>>,
  const C extends Record<string, NumberOutput | MaybeOutput> = Record<never, never>,
>(
  declaration: Omit<Calculator<I, O, C>, 'compute' | 'steps'> & {
    readonly compute: (input: NoInfer<Input<I>>) => Exact<R, O>;
    /** By the name of what each line works out, in the order of the working. */
    readonly steps: S & Named<S, NoInfer<O>>;
  },
): Calculator<I, O, C> {
  const steps = Object.entries<Working>(declaration.steps).map(([of, line]) => ({ of, ...line }));
  return { ...declaration, steps };
}

/** A calculator seen by code that serves all of them. Methods, so that each narrower one fits. */
export interface AnyCalculator {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly pace?: 'idle';
  readonly asks: readonly string[];
  readonly answers: readonly string[];
  readonly inputs: Readonly<Record<string, Entry>>;
  readonly outputs: Readonly<Record<string, OutputEntry>>;
  compute(input: Readonly<Record<string, Value>>): Readonly<Record<string, Result>>;
  readonly comparisons?: Readonly<Record<string, NumberOutput | MaybeOutput>>;
  compare?(both: {
    readonly [S in SetId]: {
      readonly input: Readonly<Record<string, Value>>;
      readonly output: Readonly<Record<string, Result>>;
    };
  }): Readonly<Record<string, number | Absent>>;
  readonly steps: readonly Step[];
  readonly limits: readonly {
    readonly id: string;
    holds(
      input: Readonly<Record<string, Value>>,
      output: Readonly<Record<string, Result>>,
    ): boolean;
    readonly say: string;
  }[];
  readonly validity: readonly {
    readonly id: string;
    readonly label: string;
    readonly symbol: string;
    readonly kind: Kind;
    readonly metric?: string;
    readonly inch?: string;
    of(input: Readonly<Record<string, Value>>, output: Readonly<Record<string, Result>>): number;
    readonly possible: readonly [number, number];
    readonly by?: readonly string[];
  }[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
  readonly sweep: { readonly input: string; readonly output: string };
  readonly solve: { readonly input: string; readonly output: string };
  readonly exercise: Exercises<string, string>;
}
