import type { calculators } from '../calculators/index.ts';

type Calculators = typeof calculators;

/** The results of one calculator by name: its outputs, and what it says of both sets together. */
type ResultOf<C> = C extends { readonly outputs: infer O; readonly comparisons?: infer P }
  ? (keyof O | (P extends undefined ? never : keyof NonNullable<P>)) & string
  : never;

/** `calculator.output` of every result of the site. */
export type ResultName = {
  [Id in keyof Calculators & string]: `${Id}.${ResultOf<Calculators[Id]>}`;
}[keyof Calculators & string];

/** A way to the same answer that shares no published number: a second method, or a form that is exact. */
interface Way {
  readonly kind: 'second route' | 'closed form';
  /** What is compared with what, for the reader. */
  readonly say: string;
  /** The results it reaches another way; none where it tests a part of the model that is no result. */
  readonly legs?: readonly ResultName[];
}

/** A law that must hold. It reaches no result by itself: a wrong answer may keep it. */
interface Property {
  readonly kind: 'property';
  readonly say: string;
}

export type Route = Way | Property;

export type Routes = Readonly<Record<string, Route>>;

/** Gives a topic's routes their types; a leg that names no result does not compile. */
export function defineRoutes<const R extends Routes>(routes: R): R {
  return routes;
}
