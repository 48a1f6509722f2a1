import type { SetId } from '../../../calculators/define.ts';
import { fromSI } from '../../../units/units.ts';
import type { Points } from '../../chart/curve.ts';
import type { ChartLine } from '../../chart/types.ts';
import { numberOf, pointsOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** What the figure can show of the cycle; angles in degrees from firing TDC. */
export const views = [
  { id: 'cycle', label: 'the four strokes', from: -180, to: 540 },
  { id: 'firing', label: 'around firing TDC', from: -90, to: 150 },
  { id: 'exchange', label: 'gas exchange, enlarged', from: 200, to: 540 },
  { id: 'logarithms', label: 'log pressure over log volume', from: -180, to: 180 },
] as const;
export type View = (typeof views)[number]['id'];

/** The part of a curve between two places; the list rises in x. */
export function slice({ x, y }: Points, from: number, to: number): { x: number[]; y: number[] } {
  const own: { x: number[]; y: number[] } = { x: [], y: [] };
  for (let i = 0; i < Math.min(x.length, y.length); i += 1) {
    const [at, height] = [x[i], y[i]];
    if (at === undefined || height === undefined || at < from - 1e-6 || at > to + 1e-6) continue;
    own.x.push(at);
    own.y.push(height);
  }
  return own;
}

/** Pressure over crank angle in the units shown; empty without a result. */
export function curveOf(set: FigureSet, unit: string): Points {
  return pointsOf(set.output, 'pressureCurve', 'deg', unit);
}

/** The cylinder volume of a set over the crank angle, in cm³ over degrees. */
export function volumesOf(set: FigureSet): Points {
  return pointsOf(set.output, 'volumeCurve', 'deg', 'cm3');
}

/** The events of a cycle in degrees from firing TDC, with the words of the trade. */
export function eventsOf(set: FigureSet, look: SetId): ChartLine[] {
  const degrees = (name: string): number => {
    const angle = numberOf(set.input, name);
    return angle === undefined ? Number.NaN : fromSI(angle, 'deg');
  };
  const lines = [
    { at: degrees('intakeClose') - 180, label: 'intake closes', quantity: 'intakeClose' },
    { at: -degrees('burnStart'), label: 'burn starts', quantity: 'burnStart' },
    { at: 180 - degrees('exhaustOpen'), label: 'exhaust opens', quantity: 'exhaustOpen' },
    { at: 360 - degrees('intakeOpen'), label: 'intake opens', quantity: 'intakeOpen' },
  ];
  return lines.filter(({ at }) => Number.isFinite(at)).map((line) => ({ ...line, look }));
}

/**
 * Log₁₀ of pressure over log₁₀ of volume from `from` to TDC (compression) or from TDC to `to` (expansion), in
 * rising order of volume. On these axes a polytrope is a straight line, its slope the exponent with a minus.
 */
export function logarithms(
  pressure: Points,
  volume: Points,
  from: number,
  to: number,
): { x: number[]; y: number[] } {
  const [p, v] = [slice(pressure, from, to), slice(volume, from, to)];
  const points = p.y.map((height, i) => ({ x: Math.log10(v.y[i] ?? 0), y: Math.log10(height) }));
  points.sort((a, b) => a.x - b.x);
  return { x: points.map(({ x }) => x), y: points.map(({ y }) => y) };
}

/** The strokes that the angles of a view take part in, as parts of a loop [degrees from firing TDC]. */
const strokes = [
  [-180, 0],
  [0, 180],
  [180, 360],
  [360, 540],
] as const;

/**
 * Pressure over volume between two angles, one list for each stroke, each in rising order of volume: a loop cannot
 * be read at a volume, but each of its strokes can. The stroke with the greatest pressure stands first.
 */
export function indicator(
  pressure: Points,
  volume: Points,
  from: number,
  to: number,
): readonly { x: number[]; y: number[] }[] {
  const parts = strokes.flatMap(([start, end]) => {
    const [first, last] = [Math.max(start, from), Math.min(end, to)];
    if (first >= last) return [];
    const [p, v] = [slice(pressure, first, last), slice(volume, first, last)];
    const points = p.y.map((height, i) => ({ x: v.y[i] ?? Number.NaN, y: height }));
    points.sort((a, b) => a.x - b.x);
    return [{ x: points.map(({ x }) => x), y: points.map(({ y }) => y) }];
  });
  return parts.sort((a, b) => Math.max(...b.y) - Math.max(...a.y));
}
