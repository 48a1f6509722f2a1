import { heightAt, type Points } from './curve.ts';

/** One line of a chart's table: where, and the height of each curve there (`undefined` in a gap). */
export interface Row {
  readonly x: number;
  readonly heights: readonly (number | undefined)[];
}

/** The heights of all curves at every x that any of them has, in rising order. */
export function chartRows(series: readonly Points[]): Row[] {
  const places = new Set<number>();
  for (const { x } of series) for (let i = 0; i < x.length; i += 1) places.add(x[i] ?? 0);
  return [...places]
    .sort((a, b) => a - b)
    .map((x) => ({ x, heights: series.map((points) => heightAt(points, x)) }));
}

/** At most about `most` of the rows, evenly spread, the first and the last among them. */
export function thinned<T>(rows: readonly T[], most: number): T[] {
  const stride = Math.max(1, Math.ceil((rows.length - 1) / (most - 1)));
  return rows.filter((_, i) => i % stride === 0 || i === rows.length - 1);
}

/** The stretches of a curve without a height, from the first to the last x of each. */
export function gapsOf({ x, y }: Points): (readonly [number, number])[] {
  const gaps: [number, number][] = [];
  let open = false;
  for (let i = 0; i < x.length; i += 1) {
    const at = x[i] ?? 0;
    const isGap = y[i] === undefined;
    const last = gaps.at(-1);
    if (isGap && open && last !== undefined) last[1] = at;
    else if (isGap) gaps.push([at, at]);
    open = isGap;
  }
  return gaps;
}
