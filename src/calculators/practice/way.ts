import { workPostfix, type Operand } from '../postfix.ts';

/** One line of a working, ready to be worked; made from a step when the pages are built. */
export interface Line {
  /** Name of what it works out. */
  readonly of: string;
  /** In postfix order, as {@link workPostfix} takes it. */
  readonly postfix: string;
  readonly uses: readonly string[];
}

/** The lines that lead to a result, its own last, in the order of the working. None where it has no line. */
export function wayTo<L extends Pick<Line, 'of' | 'uses'>>(
  ask: string,
  lines: readonly L[],
): readonly L[] {
  const wanted = new Set([ask]);
  const way: L[] = [];
  // A line uses only what stands before it.
  for (const line of lines.toReversed()) {
    if (!wanted.has(line.of)) continue;
    way.unshift(line);
    for (const name of line.uses) wanted.add(name);
  }
  return way;
}

export type Values = Readonly<Record<string, Operand | undefined>>;

/**
 * What each line gives [SI], in order, on the values before it.
 *
 * @param own values that stand in the place of what the line gives: the reader's own
 * @returns all of `values`, with what the lines give; a line that gives no number is left out
 */
export function workWay(
  way: readonly Line[],
  values: Values,
  own: Readonly<Record<string, number>> = {},
): Readonly<Record<string, Operand | undefined>> {
  const known: Record<string, Operand | undefined> = { ...values };
  for (const { of, postfix } of way) {
    known[of] = own[of] ?? workPostfix(postfix, (name) => known[name]);
  }
  return known;
}
