import type { NumberTable } from './table.ts';

/** The units a pressure column may stand in, by what the heading calls them; longest first. */
const pressureWords = ['mbar', 'hPa', 'kPa', 'MPa', 'bar', 'psi', 'Pa'] as const;

/** The middle one of the values by size; NaN of none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

/** Id of the pressure unit that a heading names: "pressure p1 [bar]"; undefined when it names none. */
export function unitNamed(words: string): string | undefined {
  const found = pressureWords.find((unit) =>
    new RegExp(`(^|[^a-z])${unit}[ag]?($|[^a-z])`, 'iu').test(words),
  );
  return found === 'mbar' ? 'hPa' : found;
}

/** Of columns without a heading the one that climbs by even steps is the angle. */
function climbs(column: readonly number[]): number {
  const steps = column.slice(1).map((value, i) => value - (column[i] ?? Number.NaN));
  const usual = median(steps);
  if (!(usual > 0)) return 0;
  return steps.filter((step) => Math.abs(step - usual) < 0.02 * usual + 1e-9).length / steps.length;
}

/** The places of the two columns that count. */
export interface Chosen {
  readonly angle: number;
  readonly pressure: number;
}

/** Finds crank angle and pressure among the columns; a sentence when it cannot. */
export function chooseColumns({ heading, columns }: NumberTable): Chosen | string {
  const named = (pattern: RegExp): number => heading.findIndex((word) => pattern.test(word));
  let angle = named(/angle|crank|\bca\b|cad|deg|°|theta|θ/iu);
  let pressure = heading.findIndex(
    (word, i) => i !== angle && (unitNamed(word) !== undefined || /press|^p\d*$/iu.test(word)),
  );
  if (angle < 0) {
    const score = columns.map(climbs);
    const best = Math.max(...score.map((one, i) => (i === pressure ? 0 : one)));
    if (best < 0.5)
      return 'No column climbs in even steps, so the crank angle was not found. Name it in the heading: angle.';
    angle = score.indexOf(best);
  }
  if (pressure < 0) {
    const rest = columns.map((_, i) => i).filter((i) => i !== angle);
    const only = rest[0];
    if (rest.length !== 1 || only === undefined)
      return 'There are several columns beside the angle and none is headed as a pressure. Name it in the heading: pressure bar.';
    pressure = only;
  }
  return { angle, pressure };
}
