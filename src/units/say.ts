import { kindWords, type Kind } from './kinds.ts';
import { exampleSentence, type Exemplified } from './say-example.ts';
import type { Unit } from './units.ts';
import { unitsOfKind } from './units.ts';

/** A text that replaces what was typed when the reader accepts it, and the words on its button. */
export interface Suggestion {
  readonly text: string;
  readonly label: string;
}

/** What stopped a reading. `text` also covers numbers too large and a negative ±. */
export type Problem =
  | 'empty'
  | 'text'
  | 'wrong-kind'
  | 'unknown-unit'
  | 'ambiguous'
  | 'zero-denominator'
  | 'too-long'
  | 'not-whole';

/** A reading that failed, with one sentence or two that name the quantity, what was typed, what is accepted. */
export interface Refusal {
  readonly ok: false;
  readonly problem: Problem;
  readonly say: string;
  readonly suggestions: readonly Suggestion[];
}

/** Problems that an example of what is accepted answers; a question brings its own, and length needs none. */
const exemplified: ReadonlySet<Problem> = new Set([
  'empty',
  'text',
  'wrong-kind',
  'unknown-unit',
  'zero-denominator',
  'not-whole',
]);

/** Builds a {@link Refusal}: "Stroke must be a length. ", then what is wrong, then how to write it. */
export function refuse(
  problem: Problem,
  about: Exemplified & { readonly label: string },
  wrong: string,
  suggestions: readonly Suggestion[] = [],
): Refusal {
  const example = exemplified.has(problem) ? ` ${exampleSentence(about)}` : '';
  const say = `${about.label} must be ${kindWords[about.kind]}. ${wrong}${example}`;
  return { ok: false, problem, say, suggestions };
}

/** What was typed, in quotation marks, cut where it would drown the sentence. */
export function quote(typed: string): string {
  return `“${typed.length > 40 ? `${typed.slice(0, 39)}…` : typed}”`;
}

/** A suggestion whose button says what it will type. */
export function suggest(text: string): Suggestion {
  return { text, label: text };
}

/** A number and a unit as a reader would type them. */
export function typedText(number: string, unit: Unit): string {
  return unit.symbol === '' || unit.symbol === '°'
    ? number + unit.symbol
    : `${number} ${unit.symbol}`;
}

/** The units a field accepts, as a list for a sentence: "m, mm, cm … or ft". '' where there is none. */
export function acceptedUnits(kind: Kind): string {
  const symbols = unitsOfKind(kind).flatMap((u) => (u.symbol === '' ? [] : [u.symbol]));
  return symbols.length < 2
    ? symbols.join('')
    : `${symbols.slice(0, -1).join(', ')} or ${symbols.at(-1)}`;
}
