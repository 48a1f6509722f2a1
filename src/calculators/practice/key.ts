import { withUnit, formatNumber } from '../../units/format.ts';
import { formatResult } from '../../units/result.ts';
import { fromSI } from '../../units/units.ts';
import type { AnyCalculator } from '../define.ts';
import type { Question } from './make.ts';
import { workWay } from './way.ts';
import { answerWords, unitOfResult, withinWords } from './words.ts';

/** What stands in the key of a sheet for one question. */
export interface KeyEntry {
  readonly answer: string;
  /** What counts as right, or what the sets give. */
  readonly beside: string;
  /** The values of the working's lines [SI], in their order, the answer's own last; none where there is no formula. */
  readonly way: readonly { readonly of: string; readonly value: number }[];
}

function wayOf(question: Question): KeyEntry['way'] {
  if (question.kind !== 'number') return [];
  const { plan } = question;
  const { input, output } = question.case;
  const told = Object.fromEntries(
    plan.told.map((name) => {
      const value = output[name];
      return [name, typeof value === 'number' ? value : undefined];
    }),
  );
  const worked = workWay(plan.way, { ...input, ...told });
  return plan.way.flatMap(({ of }) => {
    const value = worked[of];
    return typeof value === 'number' ? [{ of, value }] : [];
  });
}

function besideOf(calculator: AnyCalculator, question: Question): string {
  switch (question.kind) {
    case 'number': {
      const { answer, plan } = question;
      const ends = [-1, 1].map((way) => answer * (1 + way * plan.tolerance));
      const [low = answer, high = answer] = ends.sort((one, other) => one - other);
      return `right from ${withinWords(low, question)} to ${withinWords(high, question)}`;
    }
    case 'read': {
      const { within, unit } = question;
      return `right within ${withUnit(formatNumber(fromSI(within, unit), { significant: 2 }), unit)}`;
    }
    default: {
      const { cases, plan, units } = question;
      const unit = unitOfResult(calculator, plan.ask, units === 'inch' ? 'inch' : 'metric');
      return cases
        .map(({ answer }, at) => `${'ABC'.charAt(at)} ${formatResult(answer, unit)}`)
        .join(', ');
    }
  }
}

/** The key to one question: its answer, how near it must come, and the values on the way to it. */
export function keyOf(calculator: AnyCalculator, question: Question): KeyEntry {
  return {
    answer: answerWords(question),
    beside: besideOf(calculator, question),
    way: wayOf(question),
  };
}
