import type { AnyCalculator, SetId, Value } from '../../calculators/define.ts';
import { outputsOrNone } from '../../calculators/evaluate.ts';
import { exampleInput } from '../../calculators/practice/example.ts';
import { unitFor } from '../../calculators/output-unit.ts';
import { workPostfix, type Operand } from '../../calculators/postfix.ts';
import { formatResult } from '../../units/result.ts';
import { know } from '../working/know.ts';
import { namesIn, parseFormula } from '../working/parse.ts';
import { toPostfix } from '../working/postfix.ts';

/** One line of a sheet that is to be judged. `{…}` in its texts is worked by the calculator. */
export interface SheetLine {
  readonly line: string;
  readonly shows?: string | undefined;
  /** Declared changes of inputs, each an expression over the true values [SI]: the line's fault. */
  readonly with?: Readonly<Record<string, string>> | undefined;
  /** A fault that is no number. */
  readonly fault?: true | undefined;
  /** Why it is wrong, or why it is right; `{with: …}` is what the changed inputs give. */
  readonly why: string;
}

/** An invented sheet of the shop, with faults in it. */
export interface JudgedSheet {
  readonly calculator: string;
  readonly set: SetId;
  readonly lines: readonly SheetLine[];
}

/** A line as the page shows it. */
export interface JudgedLine {
  readonly line: string;
  readonly shows: string;
  readonly isFault: boolean;
  readonly why: string;
}

type Numbers = Readonly<Record<string, Operand | undefined>>;

/** Inputs and results that an expression may use. */
function numbersOf(calculator: AnyCalculator, input: Readonly<Record<string, Value>>): Numbers {
  const output = outputsOrNone(calculator, input);
  if (output === undefined)
    throw new Error(`${calculator.id} refuses the numbers of a sheet; correct its changes`);
  const operands = Object.entries({ ...input, ...output }).flatMap(([name, value]) =>
    typeof value === 'number' || typeof value === 'string' || Array.isArray(value)
      ? [[name, value as Operand] as const]
      : [],
  );
  return Object.fromEntries(operands);
}

function worked(calculator: AnyCalculator, formula: string, numbers: Numbers): number {
  const postfix = toPostfix(parseFormula(formula), (name) => know(calculator, name).isOptional);
  const value = workPostfix(postfix, (name) => numbers[name]);
  if (value === undefined)
    throw new Error(`${calculator.id}: “${formula}” gives no number on this sheet`);
  return value;
}

/** The unit an expression is printed in: that of the first quantity in it. */
function unitOfFormula(calculator: AnyCalculator, formula: string): string {
  const [first = ''] = namesIn(parseFormula(formula));
  const { kind = 'ratio' } = know(calculator, first);
  const entry = calculator.inputs[first] ?? calculator.outputs[first];
  return entry !== undefined && 'kind' in entry
    ? unitFor(entry, 'metric')
    : unitFor({ kind }, 'metric');
}

/** What stands between braces, and after `with:` what the changed numbers give; a unit may follow a bar. */
const slot = /\{(with: )?([^}|]+)(?:\|([^}]+))?\}/gu;

function filled(calculator: AnyCalculator, text: string, own: Numbers, changed: Numbers): string {
  return text.replace(slot, (_, isChanged: string | undefined, formula: string, unit?: string) => {
    const si = worked(calculator, formula, isChanged === undefined ? own : changed);
    return formatResult(si, unit?.trim() ?? unitOfFormula(calculator, formula));
  });
}

/**
 * The lines of a sheet with their numbers. Those of a faulty line come of its declared changes; the others are the
 * calculator's own.
 *
 * @throws Error where a change alters nothing that the line shows, so that there would be nothing to find
 */
export function judgedLines(calculator: AnyCalculator, sheet: JudgedSheet): readonly JudgedLine[] {
  const input = exampleInput(calculator, sheet.set);
  const right = numbersOf(calculator, input);
  return sheet.lines.map(({ line, shows = '', with: changes, fault, why }) => {
    const moved = Object.entries(changes ?? {}).map(
      ([name, formula]) => [name, worked(calculator, formula, right)] as const,
    );
    const changed = numbersOf(calculator, { ...input, ...Object.fromEntries(moved) });
    const shown = filled(calculator, shows, changed, changed);
    if (moved.length > 0 && shows !== '' && shown === filled(calculator, shows, right, right))
      throw new Error(`${calculator.id}, “${line}”: its change alters nothing that is shown`);
    return {
      line: filled(calculator, line, right, changed),
      shows: shown,
      isFault: moved.length > 0 || fault === true,
      why: filled(calculator, why, right, changed),
    };
  });
}
