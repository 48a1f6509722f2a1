import { mostCylinders } from '../../core/balance/cylinders.ts';
import type { Throw } from '../../core/balance/crank-throws.ts';
import { cells } from '../../units/list-items.ts';
import { readQuantity } from '../../units/read.ts';

/**
 * A layout that a reader writes: one row a throw, `own: 0 at 1: -45 45; 90 at 2: -45 45`. Angle of the throw in
 * degrees, its place in pin spacings from anywhere along the crank, and the bank of each rod on it in degrees. Rows are
 * parted by semicolons or line breaks.
 */

/** One row as typed; what is not written yet is empty. */
export interface WrittenThrow {
  readonly angle: string;
  readonly place: string;
  readonly banks: string;
}

/** A part of a row. */
export type ThrowPart = keyof WrittenThrow;

/** A layout that can be worked, or what stops it: the row, counted from 0, and its part where one is to blame. */
export type ReadLayout =
  | { readonly throws: readonly Throw[] }
  | { readonly problem: string; readonly row?: number; readonly part?: ThrowPart };

const start = /^own:\s*/;

/** Further round than a reader means by an angle [degrees], and further along than a crank is long [pin spacings]. */
const mostAngle = 720;
const mostPlace = 100;

/** True for a layout of the reader's own, whether it can be worked or not. */
export function isOwnLayout(text: string): boolean {
  return start.test(text);
}

/** The rows of a written layout, also of one that cannot be worked. */
export function writtenThrows(text: string): readonly WrittenThrow[] {
  const rows = text.replace(start, '').split(/[;\n]/);
  // A row that is being begun behind the last separator is none yet.
  if (rows.length > 1 && rows.at(-1)?.trim() === '') rows.pop();
  return rows.map((row) => {
    const [front = '', ...banks] = row.split(':');
    const [angle = '', ...place] = front.split(/(?:^|\s)at(?=\s|$)/);
    return { angle: angle.trim(), place: place.join(' ').trim(), banks: banks.join(' ').trim() };
  });
}

/** The text of a layout, with every part as typed but for the signs that would part it. */
export function ownLayout(rows: readonly WrittenThrow[]): string {
  const lines = rows.map(({ angle, place, banks }) =>
    [plain(angle), ' at ', plain(place), ': ', plain(banks)].join('').trim(),
  );
  // An empty row at the end would be taken for a separator.
  return `own: ${lines.join('; ')}`;
}

function plain(text: string): string {
  return text
    .replace(/[;:\n]+/g, ' · ')
    .replace(/(^|\s)at(?=\s|$)/g, '$1·')
    .trim();
}

/** A layout with one of its throws, counted from 0, at another angle [degrees]. */
export function withThrowAt(text: string, at: number, degrees: number): string {
  const angle = String(Math.round(degrees * 100) / 100);
  return ownLayout(writtenThrows(text).map((one, row) => (row === at ? { ...one, angle } : one)));
}

let last: { readonly text: string; readonly read: ReadLayout } | undefined;

/**
 * Reads a written layout, places counted from the middle between the outermost throws. Never throws. The last one is
 * kept, since what is typed is read to be judged, to be worked and to be drawn.
 */
export function readOwnLayout(text: string): ReadLayout {
  if (last?.text !== text) last = { text, read: readAnew(text) };
  return last.read;
}

function readAnew(text: string): ReadLayout {
  const throws: Throw[] = [];
  const rows = writtenThrows(text);
  const count = rows.reduce((sum, { banks }) => sum + cells(banks).length, 0);
  if (count > mostCylinders || rows.length > mostCylinders)
    return {
      problem: `A layout has at most ${String(mostCylinders)} cylinders. This one has ${String(Math.max(count, rows.length))}.`,
    };
  for (const [row, written] of rows.entries()) {
    const read = readThrow(written, `Throw ${String(row + 1)}`);
    if ('problem' in read) return { ...read, row };
    throws.push(read);
  }
  const twice = twiceFilled(throws);
  if (twice !== undefined) return twice;
  const places = throws.map(({ position }) => position);
  const middle = (Math.min(...places) + Math.max(...places)) / 2;
  return { throws: throws.map((one) => ({ ...one, position: one.position - middle })) };
}

function readThrow(
  { angle, place, banks }: WrittenThrow,
  name: string,
): Throw | { readonly problem: string; readonly part?: ThrowPart } {
  if (angle === '' && place === '' && banks === '')
    return { problem: `${name} is an empty row. Fill it, or remove it.`, part: 'angle' };
  const at = readAngle(angle, `${name}, angle`);
  if (typeof at === 'string') return { problem: at, part: 'angle' };
  const along = readNumber(place, `${name}, place along the crank`);
  if (typeof along === 'string') return { problem: along, part: 'place' };
  const items = cells(banks);
  if (items.length === 0)
    return {
      problem: `${name} carries no cylinder. Give the bank angle of each of its cylinders, 0 for an upright one.`,
      part: 'banks',
    };
  const found: number[] = [];
  for (const item of items) {
    const bank = readAngle(item, `${name}, bank`);
    if (typeof bank === 'string') return { problem: bank, part: 'banks' };
    found.push(bank);
  }
  return { angle: at, position: along, banks: found };
}

/** [rad], or why there is none. Degrees are turned as those of the ready layouts are, so that equal ones are equal. */
function readAngle(text: string, label: string): number | string {
  if (text === '') return `${label}: nothing is entered. An angle in degrees is asked for.`;
  const read = readQuantity(text, { label, kind: 'angle', unit: 'deg', samples: ['90'] });
  if (!read.ok) return read.say;
  const angle = read.unit === 'deg' ? read.value * (Math.PI / 180) : read.si;
  return Math.abs(angle) > (mostAngle * Math.PI) / 180
    ? `${label} must be between −${String(mostAngle)}° and ${String(mostAngle)}°. You entered ${text}.`
    : angle;
}

function readNumber(text: string, label: string): number | string {
  if (text === '') return `${label}: nothing is entered. A place in pin spacings is asked for.`;
  const read = readQuantity(text, { label, kind: 'ratio', unit: 'ratio', samples: ['2'] });
  if (!read.ok) return read.say;
  return Math.abs(read.si) > mostPlace
    ? `${label} must be between −${String(mostPlace)} and ${String(mostPlace)} pin spacings. You entered ${text}.`
    : read.si;
}

/** Two cylinders in one place, in words; undefined where each stands in a place of its own. */
function twiceFilled(throws: readonly Throw[]): ReadLayout | undefined {
  const seen: { readonly row: number; readonly position: number; readonly bank: number }[] = [];
  for (const [row, { position, banks }] of throws.entries()) {
    for (const bank of banks) {
      const other = seen.find(
        (one) => one.position === position && Math.abs(Math.sin((one.bank - bank) / 2)) < 1e-9,
      );
      if (other !== undefined) return { problem: twiceWords(other.row, row), row, part: 'banks' };
      seen.push({ row, position, bank });
    }
  }
  return undefined;
}

function twiceWords(one: number, other: number): string {
  const numbers = [String(one + 1), String(other + 1)];
  return one === other
    ? `Throw ${numbers[0] ?? ''} has two cylinders in one bank. Each cylinder of a throw needs a bank of its own.`
    : `Throws ${numbers.join(' and ')} have a cylinder in the same bank at the same place. Two cylinders cannot stand in one place.`;
}

/** A written layout in short: `Own layout, 4 throws, 8 cylinders`. */
export function ownLayoutWords(text: string): string {
  const read = readOwnLayout(text);
  if ('problem' in read) return 'Own layout';
  const cylinders = read.throws.reduce((sum, { banks }) => sum + banks.length, 0);
  const counted = (count: number, one: string): string =>
    `${String(count)} ${one}${count === 1 ? '' : 's'}`;
  return `Own layout, ${counted(read.throws.length, 'throw')}, ${counted(cylinders, 'cylinder')}`;
}
