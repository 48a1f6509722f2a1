import { at } from '../math/at.ts';
import { above, atLeast, refusal } from '../refuse.ts';

/** More inertias than a crank with its damper and flywheel needs; a longer line is a mistake. */
export const mostInertias = 10;

/**
 * Inertias in line with a spring between each two, free at both ends: the usual picture of a crank that can twist.
 *
 * One stiffness [N·m/rad] fewer than inertias [kg·m²]: the first joins the first inertia to the second.
 */
export interface ShaftLine {
  readonly lineInertias: readonly number[];
  readonly lineStiffnesses: readonly number[];
}

/**
 * Refuses what is no line of inertias.
 *
 * @throws OutOfDomain for fewer than two inertias or more than {@link mostInertias}, for another number of stiffnesses
 * than one fewer, and for an inertia or a stiffness not above zero
 */
export function checkLine({ lineInertias, lineStiffnesses }: ShaftLine): void {
  const count = { lineInertias: lineInertias.length, lineStiffnesses: lineStiffnesses.length };
  if (count.lineInertias < 2) throw refusal(count, 'lineInertias', 'at least', 2, 'two');
  if (count.lineInertias > mostInertias)
    throw refusal(count, 'lineInertias', 'at most', mostInertias, 'ten');
  const springs = count.lineInertias - 1;
  const fewer = 'one fewer than inertias';
  if (count.lineStiffnesses < springs)
    throw refusal(count, 'lineStiffnesses', 'at least', springs, fewer);
  if (count.lineStiffnesses > springs)
    throw refusal(count, 'lineStiffnesses', 'at most', springs, fewer);
  for (const each of lineInertias) above({ lineInertias: each }, 'lineInertias');
  for (const each of lineStiffnesses) above({ lineStiffnesses: each }, 'lineStiffnesses');
}

/** One row of Holzer's table: how far this inertia swings, and the torque in the shaft behind it. */
export interface HolzerRow {
  /** The first inertia swings by 1. */
  readonly amplitude: number;
  /** [N·m] for each rad of the first inertia: of all inertias up to here. */
  readonly torque: number;
}

/**
 * Holzer's table: the line made to swing at a frequency [Hz], the first inertia by one. The torque ω²JΘ of all
 * inertias so far twists the next spring. What is left behind the last inertia would have to be applied there; at a
 * natural frequency it is zero.
 *
 * @throws OutOfDomain as {@link checkLine}, and for a frequency below zero
 * Source: W. T. Thomson, Theory of Vibration with Applications, 12.4, after H. Holzer (1921).
 */
export function holzerTable(
  line: ShaftLine,
  trial: { readonly trialFrequency: number },
): readonly HolzerRow[] {
  checkLine(line);
  return holzerRows(line, (2 * Math.PI * atLeast(trial, 'trialFrequency')) ** 2);
}

/** The rows of {@link holzerTable} of a line that is known to be one, for ω² [1/s²]. */
export function holzerRows(line: ShaftLine, square: number): readonly HolzerRow[] {
  let amplitude = 1;
  let torque = 0;
  return line.lineInertias.map((inertia, i) => {
    if (i > 0) amplitude -= torque / at(line.lineStiffnesses, i - 1);
    torque += square * inertia * amplitude;
    return { amplitude, torque };
  });
}

/** The same line seen from its other end. */
export function reversed({ lineInertias, lineStiffnesses }: ShaftLine): ShaftLine {
  return {
    lineInertias: [...lineInertias].reverse(),
    lineStiffnesses: [...lineStiffnesses].reverse(),
  };
}
