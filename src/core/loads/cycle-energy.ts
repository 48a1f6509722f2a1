import type { PressureInput, PressureModel } from './cylinder-pressure.ts';
import { gauss } from '../math/gauss.ts';
import { maximum } from '../math/peak.ts';
import { above, atLeast } from '../refuse.ts';
import { gasConstant } from './trapped-charge.ts';

/** Work and heat of one cylinder in one cycle [J]. */
export interface CycleEnergy {
  /** Work on the piston from BDC to BDC with the charge shut in: compression and expansion strokes. */
  readonly gross: number;
  /** Work over all four strokes. */
  readonly net: number;
  /** Work between intake closing and exhaust opening. */
  readonly closed: number;
  /** Heat set free by burning. */
  readonly released: number;
  /** What the walls take of it while the charge burns. */
  readonly wallBurning: number;
  /** Heat to the walls that the two polytropes imply, (n − γ)/(γ − 1) times their work; negative: from them. */
  readonly wallPolytropes: number;
  /** Internal energy p V/(γ − 1) at exhaust opening less that at intake closing. */
  readonly stored: number;
}

function workBetween(model: PressureModel, from: number, to: number, cells: number): number {
  const { volume } = model;
  return to > from ? gauss((θ) => model.at(θ) * volume.slope(θ), from, to, cells) : 0;
}

/** Work [J] along p V^n = constant from pressure [Pa] and volume `from` to volume `to` [m³]; n = 1 is no exception. */
function polytropicWork(pressure: number, from: number, to: number, n: number): number {
  const span = Math.log(to / from);
  const power = (1 - n) * span;
  return pressure * from * (power === 0 ? span : (span * Math.expm1(power)) / power);
}

/**
 * Work and heat of the cycle of `model`, made from `input`. Work is ∫p dV: closed along the two polytropes,
 * by Gauss-Legendre elsewhere, between the events, so that no step of the pressure lies inside a cell.
 *
 * From intake closing to exhaust opening the books close: released = closed + stored + wallBurning +
 * wallPolytropes. With one γ_b for the whole time a compression exponent above it books heat as coming from the
 * walls; that is bookkeeping for a cold charge whose own γ is higher, not a measurement of the walls.
 */
export function cycleEnergy(input: PressureInput, model: PressureModel): CycleEnergy {
  const { intakeClose, burnStart, burnEnd, exhaustOpen, intakeOpen } = model.events;
  const γ = input.burnedGamma;
  const { volume, closing } = model;
  const compression = polytropicWork(
    closing.pressure,
    closing.volume,
    volume.at(burnStart),
    input.compressionExponent,
  );
  const burning = workBetween(model, burnStart, burnEnd, 20);
  const expansion = polytropicWork(
    model.at(burnEnd),
    volume.at(burnEnd),
    volume.at(exhaustOpen),
    input.expansionExponent,
  );
  const closed = compression + burning + expansion;
  const blownDown = Math.PI + input.exhaustOpen;
  const [from, to] = [Math.min(intakeOpen, 2 * Math.PI), Math.max(intakeOpen, 2 * Math.PI)];
  const late = intakeClose + 4 * Math.PI;
  // An intake that closes before BDC makes the charge work already before −π; that part stands at the end.
  const inlet = Math.min(3 * Math.PI, late);
  const gross =
    closed -
    workBetween(model, intakeClose, Math.min(-Math.PI, burnStart), 4) +
    workBetween(model, -Math.PI, intakeClose, 6) +
    workBetween(model, exhaustOpen, Math.PI, 6);
  const exchange =
    workBetween(model, Math.PI, blownDown, 6) +
    workBetween(model, blownDown, from, 4) +
    workBetween(model, from, to, 4) +
    workBetween(model, to, inlet, 4) +
    workBetween(model, inlet, 3 * Math.PI, 4);
  const energyAt = (θ: number): number => (model.at(θ) * model.volume.at(θ)) / (γ - 1);
  const released = model.released(exhaustOpen);
  return {
    gross,
    net: gross + exchange,
    closed,
    released,
    wallBurning: input.heatLoss * released,
    wallPolytropes:
      ((input.compressionExponent - γ) * compression + (input.expansionExponent - γ) * expansion) /
      (γ - 1),
    stored: energyAt(exhaustOpen) - energyAt(intakeClose),
  };
}

/**
 * Mean gas temperature [K] at the angle [rad] while the charge is shut in: p V/(m R), the charge as air.
 * `pressure` [Pa] is that of the model unless given.
 */
export function temperatureAt(
  model: PressureModel,
  angle: number,
  pressure = model.at(angle),
): number {
  return (pressure * model.volume.at(angle)) / (model.charge.trapped * gasConstant);
}

/** The greatest mean gas temperature [K] while the charge is shut in: the best sample, refined. */
export function peakTemperature(model: PressureModel): number {
  const { intakeClose, burnStart, burnEnd } = model.events;
  const hot = maximum((θ) => temperatureAt(model, θ), burnStart, burnEnd, 16).value;
  // Without a burn the gas is hottest at TDC, at which it is always shut in, or where it is shut in.
  return Math.max(hot, temperatureAt(model, 0), temperatureAt(model, intakeClose));
}

/**
 * Total friction [Pa] of the quadratic in speed of R. E. Barnes-Moss for four-stroke petrol engines of 845 to
 * 2000 cm³ at full throttle: 0.97 + 0.15 N + 0.05 N² bar with N in thousands a minute (in J. B. Heywood, Internal
 * Combustion Engine Fundamentals, 1988, §13.5). Fitted below 6000 rpm; at 8400 it gives 5.8 bar, about twice
 * what good engines show.
 *
 * `speed` is the crank speed [rad/s]. Throws OutOfDomain unless speed ≥ 0.
 */
export function frictionCorrelation(speed: number): number {
  const N = (atLeast({ torqueSpeed: speed }, 'torqueSpeed') * 30) / Math.PI / 1000;
  return 1e5 * (0.97 + 0.15 * N + 0.05 * N * N);
}

/**
 * Friction mean effective pressure [Pa] at `torqueSpeed`, from the value entered at `maxSpeed` by the shape of
 * {@link frictionCorrelation}: its size is the reader's, only the way it falls with speed is the correlation's.
 *
 * Speeds in rad/s. Throws OutOfDomain for a negative friction or speed, or a maximum speed of zero.
 */
export function frictionAt(engine: {
  readonly frictionMep: number;
  readonly maxSpeed: number;
  readonly torqueSpeed: number;
}): number {
  const highest = frictionCorrelation(above(engine, 'maxSpeed'));
  return (atLeast(engine, 'frictionMep') * frictionCorrelation(engine.torqueSpeed)) / highest;
}
