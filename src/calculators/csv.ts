import type { Kind, System } from '../units/kinds.ts';
import { formatPlain } from '../units/format.ts';
import { differenceFromSI, fromSI, unitOf } from '../units/units.ts';
import type { AnyCalculator, Entry, Result, SetId, Value } from './define.ts';
import { numberIn, numericOutputs, type InputValues, type OutputValues } from './evaluate.ts';
import { unitFor } from './output-unit.ts';
import type { Sweep } from './sweep.ts';
import type { PropagatedOutputs } from './uncertainty.ts';

/** One set with its results, as it goes into a file. */
export interface SetToExport {
  readonly input: InputValues;
  readonly output: OutputValues;
  /** The inputs' ± [SI], by name. */
  readonly inputPlusMinus?: Readonly<Record<string, number>>;
  readonly outputPlusMinus?: PropagatedOutputs;
}

export type SetsToExport = Readonly<Partial<Record<SetId, SetToExport>>>;

/** A cell: numbers are written as they are, text is made harmless. */
type Cell = number | string | undefined;

const setNames: readonly SetId[] = ['baseline', 'candidate'];

/**
 * One cell as RFC 4180 asks: quoted where it holds a comma, a quote or a line break. Text that a
 * spreadsheet would take for a formula gets an apostrophe before it; numbers cannot be one and keep
 * their sign.
 */
export function csvCell(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return formatPlain(cell);
  const text = /^[=+\-@\t\r\n\u2212]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows of cells as a CSV text, lines ended by CR LF (RFC 4180). */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

function presentSets<T>(
  sets: Readonly<Partial<Record<SetId, T>>>,
): readonly { readonly name: SetId; readonly of: T }[] {
  return setNames.flatMap((name) => {
    const of = sets[name];
    return of === undefined ? [] : [{ name, of }];
  });
}

type Measured = {
  readonly label: string;
  readonly kind: Kind;
  readonly metric?: string;
  readonly inch?: string;
};

function heading(label: string, unitId: string, what = ''): string {
  const { symbol } = unitOf(unitId);
  return `${label}${what}${symbol === '' ? '' : ` (${symbol})`}`;
}

function plusMinusIn(si: number | undefined, unitId: string): number | undefined {
  return si === undefined ? undefined : differenceFromSI(si, unitId);
}

function inputCell(entry: Entry, value: Value, unitId: string): Cell {
  if (typeof value === 'number') return fromSI(value, unitId);
  if (typeof value === 'string')
    return entry.type === 'choice' ? (entry.options[value] ?? value) : value;
  return value?.map((each) => formatPlain(fromSI(each, unitId))).join('; ');
}

function resultCell(result: Result | undefined, unitId: string): Cell {
  if (typeof result === 'object' && 'absent' in result) return result.absent;
  const value = numberIn(result);
  return value === undefined ? undefined : fromSI(value, unitId);
}

/**
 * Inputs and results of the sets given, one set a row, one quantity a column with its unit in the heading
 * and its ± beside it where there is one. Full precision; curves have a file of their own.
 */
export function resultsCsv(calculator: AnyCalculator, sets: SetsToExport, system: System): string {
  const present = presentSets(sets);
  const columns: Cell[][] = [['Set', ...present.map(({ name }) => name)]];
  const column = (title: string, cell: (set: SetToExport) => Cell): void => {
    columns.push([title, ...present.map(({ of }) => cell(of))]);
  };
  for (const [name, entry] of Object.entries(calculator.inputs)) {
    const unit = entry.type === 'choice' ? 'count' : unitFor(entry, system);
    column(entry.type === 'choice' ? entry.label : heading(entry.label, unit), ({ input }) =>
      inputCell(entry, input[name], unit),
    );
    if (present.some(({ of }) => (of.inputPlusMinus?.[name] ?? 0) > 0))
      column(heading(entry.label, unit, ', ±'), ({ inputPlusMinus }) =>
        plusMinusIn(inputPlusMinus?.[name], unit),
      );
  }
  for (const name of numericOutputs(calculator)) {
    const entry = numeric(calculator.outputs[name]);
    if (entry === undefined) continue;
    const unit = unitFor(entry, system);
    column(heading(entry.label, unit), ({ output }) => resultCell(output[name], unit));
    if (present.some(({ of }) => (of.outputPlusMinus?.[name]?.plusMinus ?? 0) > 0))
      column(heading(entry.label, unit, ', ±'), ({ outputPlusMinus }) =>
        plusMinusIn(outputPlusMinus?.[name]?.plusMinus, unit),
      );
  }
  return csvText(transposed(columns));
}

/** A curve's points: for each set its own pair of columns, since the two may start and end differently. */
export function seriesCsv(
  calculator: AnyCalculator,
  name: string,
  sets: SetsToExport,
  system: System,
): string {
  const entry = calculator.outputs[name];
  if (entry?.type !== 'series') throw new RangeError(`${calculator.id} has no curve "${name}"`);
  const [xUnit, yUnit] = [unitFor(entry.x, system), unitFor(entry.y, system)];
  const columns: Cell[][] = [];
  for (const { name: set, of } of presentSets(sets)) {
    const series = of.output[name];
    if (typeof series !== 'object' || !('x' in series)) continue;
    columns.push([
      heading(entry.x.label, xUnit, `, ${set}`),
      ...Array.from(series.x, (x) => fromSI(x, xUnit)),
    ]);
    columns.push([
      heading(entry.y.label, yUnit, `, ${set}`),
      ...Array.from(series.y, (y) => (Number.isFinite(y) ? fromSI(y, yUnit) : undefined)),
    ]);
  }
  return csvText(transposed(columns));
}

/** A sweep's table: the input once, then the output of each set; a gap is an empty cell. */
export function sweepCsv(
  calculator: AnyCalculator,
  { variable, output }: { readonly variable: string; readonly output: string },
  sweeps: Readonly<Partial<Record<SetId, Sweep>>>,
  system: System,
): string {
  const input: Measured | undefined = numeric(calculator.inputs[variable]);
  const result: Measured | undefined = numeric(calculator.outputs[output]);
  if (input === undefined || result === undefined)
    throw new RangeError(`${calculator.id} has no sweep of "${output}" over "${variable}"`);
  const [xUnit, yUnit] = [unitFor(input, system), unitFor(result, system)];
  const present = presentSets(sweeps);
  const x = present[0]?.of.x ?? [];
  return csvText(
    transposed([
      [heading(input.label, xUnit), ...x.map((value) => fromSI(value, xUnit))],
      ...present.map(({ name, of }): Cell[] => [
        heading(result.label, yUnit, `, ${name}`),
        ...of.y.map((value) => (value === undefined ? undefined : fromSI(value, yUnit))),
      ]),
    ]),
  );
}

function numeric(
  entry: Entry | AnyCalculator['outputs'][string] | undefined,
): Measured | undefined {
  return entry?.type === 'number' || entry?.type === 'maybe' ? entry : undefined;
}

function transposed(columns: readonly (readonly Cell[])[]): Cell[][] {
  const length = Math.max(0, ...columns.map((column) => column.length));
  return Array.from({ length }, (_, row) => columns.map((column) => column[row]));
}
