import { above, atLeast, atMost, refusal } from '../refuse.ts';
import { checkLine, mostInertias, type ShaftLine } from './shaft-line.ts';

/** A crank with what is bolted to its ends. Inertias in kg·m², stiffnesses in N·m/rad. */
export interface CrankParts {
  /** One throw, or each half of a split pin: metal, counterweights, big ends, and the mean of what goes up and down. */
  readonly throwInertia: number;
  /** From the middle of one crankpin to the middle of the next. */
  readonly throwStiffness: number;
  /** Ring and hub together. */
  readonly damperInertia: number;
  /** What is fixed to the crank; equal to the whole where nothing is sprung. */
  readonly hubInertia: number;
  /** Of the ring on its hub. Absent where the ring is fixed to it: then both count as one. */
  readonly ringStiffness?: number | undefined;
  /** From the hub to the middle of the first crankpin. */
  readonly noseStiffness: number;
  /** From the middle of the last crankpin to the flywheel. */
  readonly flangeStiffness: number;
  readonly flywheelInertia: number;
  /** Clutch cover and plates, which turn with the flywheel. */
  readonly clutchInertia: number;
}

/** The line that a crank is taken as, and how many of its inertias stand before the first throw. */
export interface CrankLine {
  readonly line: ShaftLine;
  readonly throwsFrom: number;
}

/**
 * A crank as inertias in line: ring of the damper (where it is sprung), hub, one for each place along the crank, and
 * flywheel with clutch. `halves` says how many rods’ worth of throw stand at each place: one, or two of a split pin.
 *
 * The gearbox behind an open or a sprung clutch is left out: it hardly moves the modes of the crank.
 * @throws OutOfDomain for a part that is not as its range says, a hub heavier than its damper, and
 * more places than a line of {@link mostInertias} leaves beside damper and flywheel
 */
export function crankLine(parts: CrankParts, halves: readonly number[]): CrankLine {
  const throwInertia = above(parts, 'throwInertia');
  const between = above(parts, 'throwStiffness');
  const damper = above(parts, 'damperInertia');
  const hub = above(parts, 'hubInertia');
  atMost(parts, 'hubInertia', damper, 'the whole damper');
  const ring = damper - hub;
  const { ringStiffness } = parts;
  const isSprung = ringStiffness !== undefined && ring > 0;
  const crank = { crankLayout: halves.length };
  const room = mostInertias - (isSprung ? 3 : 2);
  if (crank.crankLayout > room)
    throw refusal(crank, 'crankLayout', 'at most', room, 'the places that a line of ten leaves');
  const flywheel = above(parts, 'flywheelInertia') + atLeast(parts, 'clutchInertia');
  const line = {
    lineInertias: [
      ...(isSprung ? [ring, hub] : [damper]),
      ...halves.map((count) => count * throwInertia),
      flywheel,
    ],
    lineStiffnesses: [
      ...(isSprung ? [above({ ringStiffness }, 'ringStiffness')] : []),
      above(parts, 'noseStiffness'),
      ...halves.slice(1).map(() => between),
      above(parts, 'flangeStiffness'),
    ],
  };
  checkLine(line);
  return { line, throwsFrom: isSprung ? 2 : 1 };
}
