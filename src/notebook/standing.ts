import { choiceWords } from '../calculators/choice.ts';
import type { AnyCalculator, Entry, SetId } from '../calculators/define.ts';
import { withUnit } from '../units/format.ts';
import type { System } from '../units/kinds.ts';
import { shownIn } from '../units/settle.ts';
import { asTyped } from './as-typed.ts';
import type { Evaluation } from './evaluation.ts';
import { sameValue, type StoredValue } from './values.ts';

/** How things stand with a set whose numbers give no result now. Every part of the page says it from this. */
export interface Standing {
  /** Labels of the fields that cannot be used; empty where no single one is to blame. */
  readonly blamed: readonly string[];
  /** Labels of the fields that a result needs and in which nothing stands, those first that the question turns on. */
  readonly needed: readonly string[];
  /** The sentence of the whole set, where no single field is to blame. */
  readonly fault?: string;
  /** The inputs of the result shown that are no longer what stands in the fields; none where no result is shown. */
  readonly lastFor: readonly LastInput[];
}

/** What an input was when it last gave a result. */
export interface LastInput {
  readonly entry: Entry;
  readonly typed: StoredValue;
}

/** The values of a set as typed, by name. */
export type TypedValues = Readonly<Record<string, StoredValue>>;

/**
 * How a set stands that has no result.
 *
 * @param now what stands in the fields
 * @param last what stood there when they gave the result that is still shown; undefined where there is none
 */
export function standingOf(
  calculator: AnyCalculator,
  { fields, fault }: Evaluation,
  now: TypedValues,
  last: TypedValues | undefined,
): Standing {
  const entries = Object.values(calculator.inputs);
  const faulty = entries.filter(({ name }) => fields[name]?.problem !== undefined);
  const isEmpty = ({ name }: Entry): boolean => now[name]?.text.trim() === '';
  const rank = ({ name }: Entry): number => (calculator.asks.includes(name) ? 0 : 1);
  return {
    blamed: faulty.filter((entry) => !isEmpty(entry)).map(({ label }) => label),
    needed: faulty
      .filter(isEmpty)
      .sort((one, other) => rank(one) - rank(other))
      .map(({ label }) => label),
    ...(fault === undefined ? {} : { fault }),
    lastFor: entries.flatMap((entry) => {
      const typed = last?.[entry.name];
      return typed === undefined || sameValue(typed, now[entry.name]) ? [] : [{ entry, typed }];
    }),
  };
}

/** A value as it was typed, with its unit: `3.48 in`. */
export function typedWords(entry: Entry, typed: StoredValue, system: System): string {
  if (entry.type === 'choice') return choiceWords(entry, typed.text) ?? typed.text;
  if (typed.text.trim() === '') return 'nothing';
  const shown = shownIn(system, typed, entry);
  const number = entry.type === 'number' ? asTyped(entry, shown, false) : undefined;
  return number ?? withUnit(shown.text, shown.unit);
}

/** More readings than these are counted and not repeated. */
const mostReadings = 3;

/** {@link typedWords}, of a long list its first reading and how many there are: `428.0 g and 7 more`. */
function shortWords({ entry, typed }: LastInput, system: System): string {
  const [first = '', ...others] = typed.text.split(/[;\n\t]/).filter((text) => text.trim() !== '');
  if (entry.type !== 'list' || others.length < mostReadings)
    return typedWords(entry, typed, system);
  const one = typedWords(entry, { ...typed, text: first.trim() }, system);
  return `${one} and ${String(others.length)} more`;
}

/** More changed inputs than these are counted and not named. */
const mostNamed = 3;

/**
 * What the last good result was for: `398.6 g` where one input has changed since, else each with its name. Empty
 * where nothing has, or no result is shown.
 */
export function lastForWords({ lastFor }: Standing, system: System): string {
  const [first] = lastFor;
  if (first === undefined) return '';
  if (lastFor.length === 1) return shortWords(first, system);
  const named = lastFor
    .slice(0, mostNamed)
    .map((each) => `${each.entry.label} ${shortWords(each, system)}`);
  const more = lastFor.length - named.length;
  return more > 0
    ? `${named.join(', ')} and ${String(more)} more as they were`
    : `${named.slice(0, -1).join(', ')} and ${named.at(-1) ?? ''}`;
}

/** The mark of a number of a last good result: `for 398.6 g`. */
export function lastGoodMark(standing: Standing, system: System): string {
  const last = lastForWords(standing, system);
  return last === '' ? 'last good' : `for ${last}`;
}

/** Some labels by name, and how many more there are. */
function namedWords(labels: readonly string[]): string {
  const named = labels.slice(0, mostNamed).map((label) => `“${label}”`);
  const more = labels.length - named.length;
  return named.join(', ') + (more > 0 ? ` and ${String(more)} more` : '');
}

/** Why a set has no result, in a sentence or two; the fields themselves say what is wrong with them. */
export function reasonWords({ blamed, needed, fault }: Standing): string {
  if (fault !== undefined) return fault;
  return [
    blamed.length > 0 ? `It cannot be worked with what stands in ${namedWords(blamed)}.` : '',
    needed.length > 0 ? `It still needs ${namedWords(needed)}.` : '',
  ]
    .join(' ')
    .trim();
}

/** How a set stands, for its table of results. `shown`: a last good result is shown. */
export function standingWords(
  set: SetId,
  standing: Standing,
  shown: boolean,
  system: System,
): string {
  if (!shown) return `No result for the ${set} yet. ${reasonWords(standing)}`.trim();
  const last = lastForWords(standing, system);
  const what = last === '' ? '' : `, for ${last}`;
  const fault = standing.fault === undefined ? '' : ` ${standing.fault}`;
  return `The ${set} shows the last good result${what}, not the numbers in the form.${fault}`;
}
