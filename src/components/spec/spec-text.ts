import { csvText } from '../../calculators/csv.ts';
import type { SpecPart } from './spec.ts';

/** The sheet in a form that other programs read. */
export interface SpecText {
  readonly job: string;
  readonly heads: readonly [baseline: string, candidate: string];
  readonly entered: readonly SpecPart[];
  readonly results: readonly SpecPart[];
}

/** Spaces that hold a number and its unit together on a page are plain ones in a file. */
function plain(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ');
}

/** The sheet as separated values, a number a line. */
export function specCsv({ heads, entered, results }: SpecText): string {
  const lines = (what: string, parts: readonly SpecPart[]): string[][] =>
    parts.flatMap(({ title, rows }) =>
      rows.map(({ label, baseline, candidate, from }) => [
        what,
        title,
        label,
        plain(baseline),
        plain(candidate),
        from,
      ]),
    );
  return csvText([
    ['', 'Group', 'Quantity', ...heads, 'Where from'],
    ...lines('entered', entered),
    ...lines('result', results),
  ]);
}

/** The sheet as JSON. */
export function specJson({ job, heads, entered, results }: SpecText): string {
  const named = (parts: readonly SpecPart[]) =>
    parts.map(({ title, rows }) => ({
      group: title,
      rows: rows.map(({ name, label, baseline, candidate, from }) => ({
        name,
        label,
        baseline: plain(baseline),
        candidate: plain(candidate),
        ...(from === '' ? {} : { from }),
      })),
    }));
  return `${JSON.stringify({ job, sets: heads, entered: named(entered), results: named(results) }, undefined, 2)}\n`;
}
