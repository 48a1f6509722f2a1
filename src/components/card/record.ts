import { balancedWith } from '../../calculators/balance/outside-masses.choices.ts';
import type { Entry, NumberEntry, SetId } from '../../calculators/define.ts';
import type { BalancedWith } from '../../core/balance/outside-masses.ts';
import { unitFor } from '../../calculators/output-unit.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';
import type { System } from '../../units/kinds.ts';
import { formatQuantity } from '../../units/format.ts';
import { withoutFalseZeros } from '../../units/result.ts';
import { isShown, present } from '../results/present.ts';

/** Lines that the balancing shop writes by hand, and that a job may have settled already. */
export type Line = 'fitted' | 'holes' | 'lastA' | 'lastB' | 'tolerance' | 'reached';

/** With which parts a crank was balanced, as the card has it. */
const fittedWords: Readonly<Record<BalancedWith, string>> = {
  neutral: 'neutral: the crank is balanced alone',
  own: 'its own, weighted: spin and run it with these alone',
};

/** What of the record is worked on other pages. */
export interface BalancerWork {
  readonly drilling: WorkView;
  readonly residual: WorkView;
  readonly outside: WorkView;
}

/** The numbers that must be the reader's own before a line is worth writing. */
const asked: Readonly<Record<Line, readonly string[]>> = {
  fitted: ['balancedWith'],
  holes: ['unbalanceRead', 'heavyAngle', 'holeDiameter', 'holeCount', 'counterweightRadius'],
  lastA: ['residualA'],
  lastB: ['residualB'],
  tolerance: ['balanceGrade', 'crankMass', 'bobweightsMass', 'maxSpeed'],
  reached: ['residualA', 'residualB', 'crankMass', 'bobweightsMass', 'maxSpeed'],
};

/**
 * What a job says for the lines of the record, for one set: only what stands on the reader's own numbers, and nothing
 * while a number stops its calculator.
 *
 * @param isExample whether the example stands for an entry
 */
export function recordOf(
  set: SetId,
  { drilling, residual, outside }: BalancerWork,
  isExample: (entry: Entry) => boolean,
  system: System,
): Readonly<Partial<Record<Line, string>>> {
  const isOwn = (work: WorkView, line: Line): boolean =>
    asked[line].every((name) => {
      const entry = work.calculator.inputs[name];
      return entry !== undefined && !isExample(entry);
    });
  const given = (work: WorkView, name: string): string => {
    const entry = work.calculator.inputs[name];
    const value = work.sets[set].input?.[name];
    return entry?.type === 'number' && typeof value === 'number'
      ? inWords(entry, value, system)
      : '—';
  };
  const worked = (work: WorkView, name: string): string => {
    const output = work.calculator.outputs[name];
    const { output: results, uncertainty } = work.sets[set];
    // To the digits of its own page.
    return output !== undefined && isShown(output)
      ? present(output, results?.[name], system, uncertainty?.[name]?.plusMinus)
      : '—';
  };
  const lines: Partial<Record<Line, string>> = {};
  const isWorked = (work: WorkView): boolean =>
    work.sets[set].output !== undefined && !work.sets[set].stale;
  const balanced = outside.sets[set].input?.[balancedWith.name];
  if (isOwn(outside, 'fitted') && (balanced === 'neutral' || balanced === 'own'))
    lines.fitted = fittedWords[balanced];
  if (isWorked(drilling) && isOwn(drilling, 'holes'))
    lines.holes = `${given(drilling, 'holeCount')} of ${worked(drilling, 'drill')}, ${worked(drilling, 'depth')} deep, middle at ${worked(drilling, 'middle')} clockwise from throw 1`;
  if (!isWorked(residual)) return lines;
  if (isOwn(residual, 'lastA')) lines.lastA = given(residual, 'residualA');
  if (isOwn(residual, 'lastB')) lines.lastB = given(residual, 'residualB');
  if (isOwn(residual, 'tolerance'))
    lines.tolerance = `G ${given(residual, 'balanceGrade')}: ${worked(residual, 'correctionA')} in A, ${worked(residual, 'correctionB')} in B`;
  if (isOwn(residual, 'reached'))
    lines.reached = `G ${withoutUnit(worked(residual, 'gradeReached'))} at ${given(residual, 'maxSpeed')}`;
  return lines;
}

/** A number as the card has it. */
function inWords(entry: NumberEntry, value: number, system: System): string {
  const words = withoutFalseZeros(
    formatQuantity(value, unitFor(entry, system), { significant: 4 }),
  );
  return entry.name === 'balanceGrade' ? withoutUnit(words) : words;
}

/** A grade is named by its number alone. */
function withoutUnit(grade: string): string {
  return grade.replace(/\s*mm\/s$/u, '');
}
