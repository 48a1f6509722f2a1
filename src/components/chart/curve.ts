import type { Scale } from './scale.ts';

/** A list of points in the units shown on the axes; where there is no height the curve has a gap. */
export interface Points {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number | undefined>;
}

/** A tenth of a drawing unit is finer than any screen shows; fewer digits make a shorter page. */
function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/**
 * The `d` attribute of a curve. Points that are not finite open a gap. Of a long list every n-th point is
 * drawn, at most about `most` (one in two degrees of a cycle), and always the last; the data itself is not thinned.
 */
export function curvePath(points: Points, x: Scale, y: Scale, most = 361): string {
  const n = Math.min(points.x.length, points.y.length);
  const stride = Math.max(1, Math.ceil((n - 1) / (most - 1)));
  let path = '';
  let pen = 'M';
  for (let i = 0; i < n; i = i === n - 1 ? n : Math.min(i + stride, n - 1)) {
    const px = points.x[i];
    const py = points.y[i];
    if (px === undefined || py === undefined || !Number.isFinite(px) || !Number.isFinite(py)) {
      pen = 'M';
      continue;
    }
    path += `${pen}${short(x.at(px))} ${short(y.at(py))}`;
    pen = 'L';
  }
  return path;
}

/** The `d` attribute of what lies between a curve without gaps and the height 0; empty for an empty curve. */
export function areaPath(points: Points, x: Scale, y: Scale): string {
  const line = curvePath(points, x, y);
  const [first, last] = [points.x[0], points.x[points.x.length - 1]];
  if (line === '' || first === undefined || last === undefined) return '';
  return `${line}L${short(x.at(last))} ${short(y.at(0))}H${short(x.at(first))}Z`;
}

/**
 * The height of a curve at `at`, read on the straight line between its neighbours. `undefined` outside the
 * curve and in a gap. The list must rise in x.
 */
export function heightAt(points: Points, at: number): number | undefined {
  const n = Math.min(points.x.length, points.y.length);
  const first = points.x[0];
  const last = points.x[n - 1];
  if (first === undefined || last === undefined || !(at >= first && at <= last)) return undefined;
  let low = 0;
  let high = n - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points.x[middle] ?? Infinity) <= at) low = middle;
    else high = middle;
  }
  const x0 = points.x[low] ?? Number.NaN;
  const x1 = points.x[high] ?? Number.NaN;
  const y0 = points.y[low] ?? Number.NaN;
  const y1 = points.y[high] ?? Number.NaN;
  if (at === x0) return Number.isFinite(y0) ? y0 : undefined;
  if (at === x1) return Number.isFinite(y1) ? y1 : undefined;
  const y = y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
  return Number.isFinite(y) ? y : undefined;
}

/** Evenly spaced places on an axis where a curve carries its mark; `phase` (0 to 1) staggers two curves. */
export function markPlaces(
  domain: readonly [number, number],
  many: number,
  phase: number,
): number[] {
  const width = (domain[1] - domain[0]) / many;
  return Array.from({ length: many }, (_, i) => domain[0] + (i + phase) * width);
}

/** Where the word beside a curve stands, in drawing units; `above` says on which side of the curve. */
export interface LabelPlace {
  readonly x: number;
  readonly y: number;
  readonly above: boolean;
  /** Half the width of the word. */
  readonly half: number;
}

/** Places across a word at which the curves near it are looked at. */
function probesOver(middle: number, half: number): readonly number[] {
  return Array.from({ length: 9 }, (_, i) => middle + half * (i / 4 - 1));
}

/**
 * Finds where a curve's own word reads best: of twenty-four places, the one farthest from every other curve
 * and from the edge on that side. `taken` holds places of words already set, `uprights` lines better not
 * written across. `undefined` for an empty curve.
 */
export function labelPlace(
  own: Points,
  others: readonly Points[],
  x: Scale,
  y: Scale,
  half: number,
  taken: readonly LabelPlace[] = [],
  uprights: readonly number[] = [],
): LabelPlace | undefined {
  const left = Math.min(...x.range) + half;
  const right = Math.max(...x.range) - half;
  const top = Math.min(...y.range);
  const bottom = Math.max(...y.range);
  let best: LabelPlace | undefined;
  let bestRoom = -Infinity;
  for (let i = 0; i < 24; i += 1) {
    const px = left + ((right - left) * i) / 23;
    for (const above of [true, false]) {
      // A sloping curve would run through a wide word: measure at its middle and at both its ends.
      let limit = above ? Infinity : -Infinity;
      const across = probesOver(px, half);
      const probes = across.map((p) => heightAt(own, x.invert(p)));
      if (probes.some((p) => p === undefined)) continue;
      for (const p of probes) {
        const py = y.at(p ?? 0);
        limit = above ? Math.min(limit, py) : Math.max(limit, py);
      }
      const place = above ? limit - 6 : limit + 6;
      let room = above ? place - top - 12 : bottom - place - 12;
      if (room < 0) continue;
      room = Math.min(room, 24);
      for (const other of others) {
        const middle = above ? place - 5 : place + 5;
        const gaps = across.flatMap((p) => {
          const height = heightAt(other, x.invert(p));
          return height === undefined ? [] : [y.at(height) - middle];
        });
        // A steep curve may jump over the word between two places.
        const crosses = gaps.some((gap, k) => gap * (gaps[k - 1] ?? gap) < 0);
        for (const gap of gaps) room = Math.min(room, crosses ? -7 : Math.abs(gap) - 7);
      }
      for (const word of taken) {
        const beside = Math.abs(word.x - px) > word.half + half + 4;
        const height = (where: number, over: boolean): number => (over ? where - 5 : where + 5);
        const apart = Math.abs(height(word.y, word.above) - height(place, above));
        if (!beside) room = Math.min(room, apart - 16);
      }
      if (uprights.some((upright) => Math.abs(upright - px) < half + 3)) room -= 12;
      if (room > bestRoom + 0.5) {
        bestRoom = room;
        best = { x: px, y: place, above, half };
      }
    }
  }
  return best;
}

/** Where the word beside a marked point stands, in drawing units. */
export interface PointPlace {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Of the four corners around a marked point and the place below it, the one whose word keeps farthest from every curve. */
export function pointPlace(
  at: readonly [number, number],
  wide: number,
  curves: readonly Points[],
  x: Scale,
  y: Scale,
): PointPlace {
  const corners = [
    { x: at[0] + 10, y: at[1] + 20, anchor: 'start' },
    { x: at[0] - 10, y: at[1] - 11, anchor: 'end' },
    { x: at[0] + 10, y: at[1] - 11, anchor: 'start' },
    { x: at[0] - 10, y: at[1] + 20, anchor: 'end' },
    { x: at[0], y: at[1] + 32, anchor: 'middle' },
  ] as const;
  const room = (corner: PointPlace): number => {
    const from = corner.x - wide * { start: 0, middle: 0.5, end: 1 }[corner.anchor];
    if (from < Math.min(...x.range) || from + wide > Math.max(...x.range)) return -Infinity;
    if (corner.y - 10 < Math.min(...y.range) || corner.y > Math.max(...y.range)) return -Infinity;
    const gaps = [0, 0.5, 1].flatMap((part) =>
      curves.flatMap((curve) => {
        const level = heightAt(curve, x.invert(from + part * wide));
        return level === undefined ? [] : [Math.abs(y.at(level) - (corner.y - 5))];
      }),
    );
    return Math.min(40, ...gaps);
  };
  return corners.reduce<PointPlace>(
    (best, corner) => (room(corner) > room(best) ? corner : best),
    corners[0],
  );
}
