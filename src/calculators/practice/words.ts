import { formatNumber, withUnit } from '../../units/format.ts';
import { formatResult } from '../../units/result.ts';
import { fromSI, unitOf } from '../../units/units.ts';
import type { System } from '../../units/kinds.ts';
import type { AnyCalculator } from '../define.ts';
import { unitFor } from '../output-unit.ts';
import { orders, type Question } from './make.ts';
import type { Plan } from './plan.ts';
import { readAnswer } from './read-answer.ts';

/** A question in words. */
export interface Asking {
  /** What is to be done, and with what. */
  readonly title: string;
  /** How the answer is written, and how near it must come. */
  readonly how: string;
}

/** A label inside a sentence: without its capital, unless that is a name's or an abbreviation's. */
export function inSentence(label: string): string {
  return /^[A-Z](?:[a-z]+’s\b|[A-Z])/u.test(label)
    ? label
    : label.charAt(0).toLowerCase() + label.slice(1);
}

/** How near an answer must come. */
export function nearBy(tolerance: number): string {
  return `within ${formatNumber(tolerance * 100)} %`;
}

export function askingOf(calculator: AnyCalculator, question: Question): Asking {
  const { plan } = question;
  const entry = calculator.outputs[plan.ask];
  const label = inSentence(entry?.label ?? plan.ask);
  switch (question.kind) {
    case 'number': {
      const { symbol } = unitOf(question.unit);
      const how =
        symbol === ''
          ? 'A plain number'
          : question.saysUnit
            ? `In ${symbol}`
            : 'Write the unit with the number';
      return { title: `Work out: ${label}`, how: `${how}; ${nearBy(plan.tolerance)}.` };
    }
    case 'choice':
      return {
        title: `Which set has more? ${entry?.label ?? plan.ask}`,
        how: 'They differ clearly, or not at all.',
      };
    case 'order':
      return {
        title: `Put the sets in order: ${label}`,
        how: 'From the least to the greatest.',
      };
    case 'read': {
      const { unit, within, at, atUnit } = question;
      const axis = entry?.type === 'series' ? inSentence(entry.x.label) : '';
      const place = withUnit(formatNumber(at), atUnit);
      const room = withUnit(formatNumber(fromSI(within, unit), { significant: 2 }), unit);
      return {
        title: `Read off the curve: ${label}, at ${place}${axis === '' ? '' : ` (${axis})`}`,
        how: `In ${unitOf(unit).symbol}, to within ${room}.`,
      };
    }
  }
}

/** The answers to a choice between two sets. */
export const choiceWords = ['Set A', 'Set B', 'Neither: both give the same'] as const;

/** The unit in which the result of an exercise is told; that of a plain number where there is none. */
export function unitOfResult(
  { outputs }: AnyCalculator,
  ask: string,
  system: System = 'metric',
): string {
  const entry = outputs[ask];
  return entry === undefined || entry.type === 'series' ? 'ratio' : unitFor(entry, system);
}

/** An order of three sets as it stands beside its button: `B < A < C`. */
export function orderWords(place: number): string {
  return (orders[place] ?? []).map((at) => 'ABC'.charAt(at)).join(' < ');
}

/** What is done in an exercise of each kind, behind the name of what it asks for. */
export const kindWords: Readonly<Record<Plan['kind'], string>> = {
  number: 'work out',
  choice: 'compare',
  order: 'order',
  read: 'read off',
};

/** The most of its tolerance that an answer may lose by being rounded for the print. */
const roundingShare = 0.2;

/** A number [SI] as a result is shown, or with more figures where what is asked is nearer than those. */
export function withinWords(
  si: number,
  { unit, plan }: { readonly unit: string; readonly plan: Pick<Plan, 'tolerance'> },
): string {
  const shown = formatResult(si, unit);
  const read = readAnswer(shown, { unit, saysUnit: true });
  const isNear = read.ok && Math.abs(read.si - si) <= roundingShare * plan.tolerance * Math.abs(si);
  return isNear ? shown : valueWords(si, unit);
}

/** The right answer of a question in words, for whoever gives up. */
export function answerWords(question: Question): string {
  switch (question.kind) {
    case 'number':
      return withinWords(question.answer, question);
    case 'read':
      return formatResult(question.answer, question.unit);
    case 'choice':
      return choiceWords[question.right];
    case 'order':
      return orderWords(question.right);
  }
}

/** A value on the way [SI] in a unit, with the figures it takes to go on with. */
export function valueWords(si: number, unit: string): string {
  return withUnit(formatNumber(fromSI(si, unit), { significant: 5 }), unit);
}
