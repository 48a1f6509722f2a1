import { at } from '../math/at.ts';
import { checkLine, holzerRows, reversed, type ShaftLine } from './shaft-line.ts';

/** One way in which a line of inertias swings by itself. */
export interface Mode {
  /** [Hz] */
  readonly frequency: number;
  /** How far each inertia swings beside the one that swings most: 1 or −1 there, and the first one is positive. */
  readonly shape: readonly number[];
}

/**
 * Natural frequencies below ω² [1/s²], the zero of turning as one piece among them.
 *
 * With s the torque over the swing of an inertia, Holzer's table reads s ← ω²J + s/(1 − s/k). A spring with s > k holds
 * a point that stands still, and each such point is one frequency passed; s > 0 behind the last inertia is one more.
 * These are the signs of the pivots of K − ω²J (Sturm), in a form that subtracts nothing nearly equal.
 * Source: W. Barth, R. S. Martin and J. H. Wilkinson, Numerische Mathematik 9 (1967), for the count and the halving; the
 * form in s is an own derivation.
 */
export function frequenciesBelow(
  { lineInertias, lineStiffnesses }: ShaftLine,
  square: number,
): number {
  let count = 0;
  let carried = 0;
  for (const [i, inertia] of lineInertias.entries()) {
    const s = square * inertia + carried;
    const k = lineStiffnesses[i] ?? 0;
    if (s > k) count++;
    carried = s === k ? -Infinity : s === -Infinity ? -k : s / (1 - s / k);
  }
  return count;
}

/** ω² [1/s²] of one mode, by halving until no double lies between: `passed` modes lie below it. */
function squareOf(line: ShaftLine, passed: number, most: number): number {
  let low = 0;
  let high = most;
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) return high;
    if (frequenciesBelow(line, middle) > passed) high = middle;
    else low = middle;
  }
}

/** A bound that no ω² of the line exceeds: twice both springs of an inertia over it (Gershgorin). */
function mostSquare({ lineInertias, lineStiffnesses }: ShaftLine): number {
  const each = lineInertias.map(
    (inertia, i) => ((lineStiffnesses[i - 1] ?? 0) + (lineStiffnesses[i] ?? 0)) / inertia,
  );
  // A little more, since the sums are rounded.
  return 2.000001 * Math.max(...each);
}

/**
 * The shape at a natural frequency: Holzer's table from either end, joined where the two agree best. From one end alone
 * what swings least would be lost in rounding.
 * Source: the twisted factorization of B. N. Parlett and I. S. Dhillon, Linear Algebra and its Applications 267 (1997).
 */
function shapeAt(line: ShaftLine, square: number): readonly number[] {
  const front = holzerRows(line, square);
  const back = [...holzerRows(reversed(line), square)].reverse();
  let join = 0;
  let least = Infinity;
  for (const [i, inertia] of line.lineInertias.entries()) {
    const [one, other] = [at(front, i), at(back, i)];
    const rest = Math.abs(
      one.torque / one.amplitude + other.torque / other.amplitude - square * inertia,
    );
    const apart = rest / inertia;
    if (apart < least) [least, join] = [apart, i];
  }
  const [front1, back1] = [at(front, join).amplitude, at(back, join).amplitude];
  const raw = line.lineInertias.map((_, i) =>
    i <= join ? at(front, i).amplitude / front1 : at(back, i).amplitude / back1,
  );
  const most = Math.max(...raw.map(Math.abs)) * Math.sign(at(raw, 0));
  return raw.map((each) => each / most + 0);
}

/**
 * Natural frequencies and shapes of a line free at both ends, the lowest first. The frequency zero, at which it turns
 * as one piece, is left out, so that there is one mode fewer than inertias. Frequencies are right to rounding.
 *
 * No two of them are ever the same (a line with every spring above zero has simple roots); two that differ by less
 * than a double tells come out as the same number.
 *
 * Undamped, massless springs, inertias that do not change with the crank angle.
 * @throws OutOfDomain as {@link checkLine}
 */
export function naturalModes(line: ShaftLine): readonly Mode[] {
  checkLine(line);
  const most = mostSquare(line);
  return line.lineStiffnesses.map((_, i) => {
    const square = squareOf(line, i + 1, most);
    return { frequency: Math.sqrt(square) / (2 * Math.PI), shape: shapeAt(line, square) };
  });
}

/**
 * The places where a shape stands still, counted in inertias from the first: 1.5 lies midway between second and third.
 * The mth mode has m of them, all inside springs; an inertia that stands still itself is one.
 */
export function nodesOf(shape: readonly number[]): readonly number[] {
  return shape.flatMap((here, i) => {
    if (here === 0) return [i];
    const next = shape[i + 1] ?? 0;
    return here * next < 0 ? [i + here / (here - next)] : [];
  });
}

/**
 * [kg·m²] What the whole line amounts to in this mode at one of its inertias: Σ J Θ² over the square of the swing there.
 * A mass of this inertia there, on a spring of its own, would swing alike.
 *
 * Source: J. P. Den Hartog, Mechanical Vibrations, 5.5 (equivalent inertia by kinetic energy).
 */
export function inertiaSeenAt(
  { lineInertias }: ShaftLine,
  shape: readonly number[],
  i: number,
): number {
  let sum = 0;
  for (const [j, inertia] of lineInertias.entries()) sum += inertia * at(shape, j) ** 2;
  return sum / at(shape, i) ** 2;
}
