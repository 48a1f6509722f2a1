import type { Component } from 'svelte';
import type { Absent, Result, SetId, Value } from '../../calculators/define.ts';
import type { Standing, TypedValues } from '../../notebook/standing.ts';
import type { System } from '../../units/kinds.ts';

/** One set as a figure sees it: the last numbers that gave a result, in SI. */
export interface FigureSet {
  readonly input: Readonly<Record<string, Value>> | undefined;
  readonly output: Readonly<Record<string, Result>> | undefined;
  /** The inputs as they were typed, with what was said of them; absent where nobody typed. */
  readonly typed?: TypedValues | undefined;
  /** True when the result is older than what stands in the fields. */
  readonly stale: boolean;
  /** Of a set that is stale: what stops it, and what the result still shown was for. */
  readonly standing?: Standing | undefined;
}

/** What a figure needs of the page's state. `Work` of the notebook fits it; a test gives a plain object. */
export interface FigureWork {
  readonly sets: Readonly<Record<SetId, FigureSet>>;
  readonly comparison?: Readonly<Record<string, number | Absent>> | undefined;
  readonly system: System;
  put(set: SetId, name: string, text: string, unit: string): void;
}

export type FigureProps = { work: FigureWork };

/** What the file of a figure gives besides its drawing. */
export interface FigureModule {
  readonly default: Component<FigureProps>;
  /** Id of the calculator whose numbers it draws. */
  readonly calculator: string;
  /** It stands in half of a wide page, beside its curves, and is as wide there as on a phone. */
  readonly half?: boolean;
}

/** The file of a figure: `crank-throw` is drawn by `CrankThrow.svelte` of its subject. */
export function isFileOf(id: string, path: string): boolean {
  const name = id.replace(/(?:^|-)([a-z])/g, (_, letter: string) => letter.toUpperCase());
  return path.endsWith(`/${name}.svelte`);
}
