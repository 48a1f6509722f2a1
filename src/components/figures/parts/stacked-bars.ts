import type { SetId } from '../../../calculators/define.ts';

/** One part of a stacked bar before it is laid. */
export interface BarPart {
  readonly label: string;
  /** In SI. */
  readonly value: number;
  /** What it stands for: names of the calculator, with spaces between. */
  readonly quantity?: string;
}

/** Words at a stacked bar, with what they stand for. */
export interface BarWords {
  readonly text: string;
  readonly quantity?: string;
}

/** Words over the part of an index. */
export interface BarHead extends BarWords {
  readonly before: number;
}

/** One part as it lies in the bar: from where to where, in SI. */
export interface BarSegment extends BarPart {
  readonly from: number;
  readonly to: number;
}

/** The bar of a set: its parts and what they make together, in SI. */
export interface Bar {
  readonly set: SetId;
  readonly total: number;
  readonly segments: readonly BarSegment[];
}

/** The parts laid end to end. A part of nothing, or of less, takes no room. */
export function laidEndToEnd(parts: readonly BarPart[]): BarSegment[] {
  let end = 0;
  return parts.map((part) => {
    const from = end;
    end += Math.max(0, part.value);
    return { ...part, from, to: end };
  });
}

/** A line of the drawing: words over what follows, a part of every bar, or what all parts make. */
export type BarRow =
  | { readonly kind: 'head'; readonly words: BarWords; readonly y: number }
  | { readonly kind: 'part'; readonly index: number; readonly y: number }
  | { readonly kind: 'total'; readonly y: number };

/** Heights [drawing units] of the three kinds of line. */
export const rowHeights = { head: 21, part: 28, total: 35 } as const;

/**
 * The lines from the top down: heads before the part of their index, each part that is in any bar, the total. `end` is
 * where the last of them ends.
 */
export function barRows(
  bars: readonly { readonly segments: readonly BarSegment[] }[],
  heads: readonly BarHead[],
  top: number,
): { readonly rows: readonly BarRow[]; readonly end: number } {
  const rows: BarRow[] = [];
  let y = top;
  for (let index = 0; index < (bars[0]?.segments.length ?? 0); index += 1) {
    const head = heads.find(({ before }) => before === index);
    if (head !== undefined) {
      rows.push({ kind: 'head', words: head, y });
      y += rowHeights.head;
    }
    if (!bars.some(({ segments }) => (segments[index]?.value ?? 0) > 0)) continue;
    rows.push({ kind: 'part', index, y });
    y += rowHeights.part;
  }
  rows.push({ kind: 'total', y: y + 4 });
  return { rows, end: y + 4 + rowHeights.total };
}
