import { calculationsVersion } from '../calculators/version.ts';

/** A result of both sets [SI] as it was when a link or a file was made; a set that had none is left out. */
export interface Was {
  readonly calculator: string;
  readonly output: string;
  readonly baseline?: number;
  readonly candidate?: number;
}

/** The results of a link or a file, and the version of the calculations that gave them. */
export interface Then {
  readonly version: number;
  readonly results: readonly Was[];
}

/** As many figures as a result is kept with: more than any page shows. */
const figures = 7;
/** Two results that differ by less than a part in this are the same: what is left is rounding. */
const same = 1e-6;

/** Writes results of now as words that {@link readThen} reads: `1/bobweight.bobweight/1.6852/1.2331`. */
export function writeThen(results: readonly Was[]): string {
  const number = (si: number | undefined): string =>
    si === undefined ? '' : String(Number(si.toPrecision(figures)));
  const words = results
    .filter(({ baseline, candidate }) => baseline !== undefined || candidate !== undefined)
    .flatMap(({ calculator, output, baseline, candidate }) => [
      `${calculator}.${output}`,
      number(baseline),
      number(candidate),
    ]);
  return words.length === 0 ? '' : [String(calculationsVersion), ...words].join('/');
}

/** Reads what {@link writeThen} wrote; undefined where it is damaged or nothing was kept. */
export function readThen(text: string | undefined): Then | undefined {
  const [version = '', ...words] = (text ?? '').split('/');
  if (!/^\d{1,6}$/.test(version) || words.length === 0 || words.length % 3 !== 0) return undefined;
  const results: Was[] = [];
  for (let at = 0; at < words.length; at += 3) {
    const [name = '', first = '', second = ''] = words.slice(at, at + 3);
    const [, calculator, output] = /^([a-z][\w-]*)\.([a-z]\w*)$/i.exec(name) ?? [];
    const [baseline, candidate] = [first, second].map(asNumber);
    if (calculator === undefined || output === undefined) return undefined;
    results.push({
      calculator,
      output,
      ...(baseline === undefined ? {} : { baseline }),
      ...(candidate === undefined ? {} : { candidate }),
    });
  }
  return { version: Number(version), results };
}

function asNumber(text: string): number | undefined {
  const number = text === '' ? Number.NaN : Number(text);
  return Number.isFinite(number) ? number : undefined;
}

/** True where a result is another than it was, beyond rounding. One that there was not is no other. */
export function isOther(was: number | undefined, now: number | undefined): boolean {
  if (was === undefined) return false;
  if (now === undefined) return true;
  return Math.abs(now - was) > same * Math.max(Math.abs(was), Math.abs(now));
}
