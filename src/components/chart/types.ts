import type { Points } from './curve.ts';

/** Which look a curve has: one of the two sets, or a thin third line that only accompanies them. */
export type Look = 'baseline' | 'candidate' | 'quiet';

/** A curve in the units shown on the axes, with the word that stands beside it. */
export interface ChartSeries extends Points {
  readonly look: Look;
  readonly label: string;
  /** Part of a curve that is marked and named elsewhere: it carries neither marks nor word. */
  readonly bare?: true;
  /** What lies between the curve and nothing is filled: areas are to be compared. */
  readonly shade?: true;
  /** What it stands for: names of the calculator, with spaces between. So for the other parts of a chart. */
  readonly quantity?: string;
}

/** A place on the x axis worth marking across the whole height. */
export interface ChartLine {
  readonly at: number;
  readonly label: string;
  readonly look?: Look;
  readonly quantity?: string;
}

/** A place in the plane worth marking: an open square, or a ring. Without a label only the mark stands. */
export interface ChartPoint {
  readonly x: number;
  readonly y: number;
  readonly label?: string;
  readonly ring?: true;
  readonly quantity?: string;
}

/** A thin line between two places, to lead the eye from one curve to the other. */
export interface ChartLink {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly quantity?: string;
}

/** An axis: its title with the unit, how a number read from it is written, and what it must show. */
export interface Axis {
  readonly title: string;
  readonly format: (value: number) => string;
  readonly ticks?: readonly number[];
  readonly domain?: readonly [number, number];
  /** Numbers the axis must contain; a pull that starts from nothing wants its zero. */
  readonly include?: readonly number[];
  readonly quantity?: string;
}
