/** How far a drawn number may lie from the example's: a share of that, or so much in the quantity's `rangeUnit`. */
export type Spread = number | { readonly by: number };

/** The inputs that vary from one draw to the next, each with its spread; a choice takes any of its options. */
export type Given<I extends string> = { readonly [K in I]?: Spread };

/** What one exercise asks. What it leaves unsaid is that of the calculator's first exercise. */
interface Asked<I extends string, O extends string> {
  readonly ask: O;
  /** How near an answer must come, as a share of the right one. */
  readonly tolerance?: number;
  readonly given?: Given<I>;
  /** Ids of limits that speak of numbers which the question does not state. */
  readonly beside?: readonly string[];
}

/** A number with its unit. */
export interface NumberExercise<I extends string, O extends string> extends Asked<I, O> {
  readonly kind: 'number';
}
/** Which of two sets has the greater result; or neither, where they differ only in what does not count. */
export interface ChoiceExercise<I extends string, O extends string> extends Asked<I, O> {
  readonly kind: 'choice';
}
/** Three sets in the order of a result. */
export interface OrderExercise<I extends string, O extends string> extends Asked<I, O> {
  readonly kind: 'order';
}
/** A height read off a curve; `tolerance` is a share of the height of the whole curve. */
export interface ReadExercise<I extends string, O extends string> extends Asked<I, O> {
  readonly kind: 'read';
  /** The part of the curve that is asked about, in the unit of its axis; all of it where nothing is said. */
  readonly between?: readonly [number, number];
}

export type Exercise<I extends string, O extends string> =
  NumberExercise<I, O> | ChoiceExercise<I, O> | OrderExercise<I, O> | ReadExercise<I, O>;

/** The exercises of a calculator: the first one, and more. A choice and an order are added where none is declared. */
export interface Exercises<I extends string, O extends string> {
  readonly ask: O;
  readonly tolerance: number;
  /** What varies in all exercises that do not say otherwise; else what the sheet asks for. */
  readonly given?: Given<I>;
  readonly beside?: readonly string[];
  readonly also?: readonly Exercise<I, O>[];
}
