import { type BurnShape, burntShare } from './burn.ts';
import {
  type CylinderGeometry,
  type CylinderVolume,
  cylinderVolume,
} from '../stack/cylinder-volume.ts';
import { at } from '../math/at.ts';
import { gauss } from '../math/gauss.ts';
import { maximum } from '../math/peak.ts';
import { above, atLeast, atMost, below, fraction } from '../refuse.ts';
import { type Charge, type ChargeInput, gasConstant, trappedCharge } from './trapped-charge.ts';

/** All that the one-zone cycle needs. SI; angles [rad] as the dictionary counts them, pressures absolute. */
export interface PressureInput extends CylinderGeometry, ChargeInput, BurnShape {
  /** Temperature [K] of the charge when the intake closes. */
  readonly chargeTemperature: number;
  /** Mean pressure [Pa] over the intake stroke. */
  readonly manifoldPressure: number;
  /** Mean pressure [Pa] over the exhaust stroke. */
  readonly exhaustPressure: number;
  /** Intake opens before TDC, closes after BDC; exhaust opens before BDC. */
  readonly intakeOpen: number;
  readonly intakeClose: number;
  readonly exhaustOpen: number;
  readonly compressionExponent: number;
  readonly expansionExponent: number;
  /** Ratio of specific heats while the charge burns. */
  readonly burnedGamma: number;
  /** Share of the released heat that the walls take while the charge burns. */
  readonly heatLoss: number;
}

/** Crank angles [rad] of one cycle from −π to 3π, firing TDC at zero, in rising order. */
export interface Events {
  readonly intakeClose: number;
  readonly burnStart: number;
  readonly burnEnd: number;
  readonly exhaustOpen: number;
  readonly intakeOpen: number;
}

/** The cycle as functions of the crank angle, made once and used at every angle. */
export interface PressureModel {
  readonly volume: CylinderVolume;
  readonly charge: Charge;
  readonly events: Events;
  /** Pressure [Pa] and volume [m³] when the intake closes. */
  readonly closing: { readonly pressure: number; readonly volume: number };
  /** Pressure [Pa] of the charge if it were only compressed to the angle, by the compression exponent. */
  compressedAt(angle: number): number;
  /** Heat [J] that has been set free by the angle, before the walls take their share. */
  released(angle: number): number;
  /** Pressure [Pa, absolute] at any crank angle [rad]; the cycle repeats every 4π. */
  at(angle: number): number;
}

/** Cells of the burn, and the duration [rad] below which it counts as instantaneous. */
const cells = 40;
const instant = 1e-9;
const cycle = 4 * Math.PI;

/** Falls smoothly from 1 to 0 while `z` goes from 0 to 1. */
function fade(z: number): number {
  return (1 + Math.cos(Math.PI * z)) / 2;
}

function durationOf({ burnDuration }: PressureInput): number {
  return burnDuration > instant ? burnDuration : 0;
}

function checkedEvents(input: PressureInput): Events {
  above(input, 'intakeClose', -Math.PI / 2);
  const intakeClose = below(input, 'intakeClose', Math.PI) - Math.PI;
  atLeast(input, 'exhaustOpen');
  below(input, 'exhaustOpen', (3 / 4) * Math.PI);
  above(input, 'intakeOpen', -Math.PI / 2);
  atMost(input, 'intakeOpen', Math.PI - input.exhaustOpen, 'the end of the blow-down');
  const exhaustOpen = Math.PI - input.exhaustOpen;
  atMost(input, 'burnStart', -intakeClose, 'when the intake closes');
  above(input, 'burnStart', -exhaustOpen, 'when the exhaust opens');
  atLeast(input, 'burnDuration');
  atMost(
    input,
    'burnDuration',
    exhaustOpen + input.burnStart,
    'the angle from burn start to exhaust opening',
  );
  return {
    intakeClose,
    burnStart: -input.burnStart,
    burnEnd: durationOf(input) - input.burnStart,
    exhaustOpen,
    intakeOpen: 2 * Math.PI - input.intakeOpen,
  };
}

/** Share burnt at an angle [rad]; a burn of no duration is done at once. */
function burntAt(input: PressureInput, { burnStart }: Events): (angle: number) => number {
  const duration = durationOf(input);
  return (angle) =>
    duration > 0
      ? burntShare(input, (angle - burnStart) / duration)
      : burntShare(input, angle < burnStart ? 0 : 1);
}

/**
 * Pressure [Pa] at an angle [rad] while the charge burns: the first law with constant γ, `heat` [J] set free in
 * all, `share` of it by the angle, of which the walls take `loss`.
 */
function burningPressure(
  volume: CylinderVolume,
  burn: {
    readonly γ: number;
    readonly from: number;
    readonly duration: number;
    readonly share: (angle: number) => number;
    readonly startPressure: number;
    readonly heat: number;
    readonly loss: number;
  },
): (angle: number) => number {
  const { γ, share } = burn;
  const vStart = volume.at(burn.from);
  const atStart = burn.startPressure * vStart ** γ;
  const perShare = (γ - 1) * (1 - burn.loss) * burn.heat;
  // ∫V^(γ−1) dx = V^(γ−1) x − ∫x dV^(γ−1), the last kept at the cells' edges.
  const width = burn.duration / cells;
  const drift = (θ: number): number =>
    (γ - 1) * share(θ) * volume.at(θ) ** (γ - 2) * volume.slope(θ);
  const edges = [0];
  let edge = 0;
  for (let i = 0; width > 0 && i < cells; i++) {
    const from = burn.from + i * width;
    edge += gauss(drift, from, from + width, 1);
    edges.push(edge);
  }
  return (θ) => {
    const v = volume.at(θ);
    const cell = width > 0 ? Math.min(Math.floor((θ - burn.from) / width), cells - 1) : 0;
    const from = burn.from + cell * width;
    const drifted = at(edges, cell) + (width > 0 ? gauss(drift, from, θ, 1) : 0);
    return (atStart + perShare * (v ** (γ - 1) * share(θ) - drifted)) / v ** γ;
  };
}

/** Pressure [Pa] at an angle [rad] and volume [m³] from the exhaust's opening to BDC after the intake stroke. */
function exchangePressure(
  input: PressureInput,
  events: Events,
  expanded: (volume: number) => number,
): (angle: number, volume: number) => number {
  const { manifoldPressure: pIn, exhaustPressure: pEx } = input;
  const overlapFrom = Math.min(events.intakeOpen, 2 * Math.PI);
  const overlapTo = Math.max(events.intakeOpen, 2 * Math.PI);
  const blownDown = Math.PI + input.exhaustOpen;
  return (θ, v) => {
    if (θ < blownDown)
      return pEx + (expanded(v) - pEx) * fade((θ - events.exhaustOpen) / (2 * input.exhaustOpen));
    if (θ < overlapFrom) return pEx;
    if (θ < overlapTo)
      return pIn + (pEx - pIn) * fade((θ - overlapFrom) / (overlapTo - overlapFrom));
    return pIn;
  };
}

/**
 * One zone, four strokes, mean cycle. The stages, firing TDC at zero:
 *
 * - intake closing: p_IVC = m R T_IVC/V_IVC, with m from the volumetric efficiency, not from manifold pressure;
 * - compression: p V^n_c constant to the start of burning;
 * - burning: the first law with constant γ_b, d(p V^γ) = (γ − 1)(1 − q_w) V^(γ−1) dQ, Q by Wiebe's function;
 *   integrated by parts, so that a short burn needs no finer steps and an instantaneous one is exact;
 * - expansion: p V^n_e constant to exhaust opening;
 * - blow-down: the excess over the exhaust pressure fades out as half a cosine, from exhaust opening to as far
 *   past BDC as it opened before;
 * - exhaust stroke at the exhaust pressure, then half a cosine to the intake pressure between intake opening
 *   and TDC, intake stroke at the intake pressure;
 * - from BDC to intake closing a straight line in log p over log V joins intake pressure and p_IVC.
 *
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, §9.2; C. R. Ferguson and
 * A. T. Kirkpatrick, Internal Combustion Engines, ch. 2 (finite heat release). Neglected: blow-by, pressure
 * waves in the ports, the change of γ with temperature, dissociation, knock.
 *
 * Throws OutOfDomain for a value without meaning, a burn that starts before the intake closes or ends after
 * the exhaust opens.
 */
export function pressureModel(input: PressureInput): PressureModel {
  const volume = cylinderVolume(input);
  const charge = trappedCharge(input, volume.swept);
  const events = checkedEvents(input);
  const T = above(input, 'chargeTemperature');
  const pIn = above(input, 'manifoldPressure');
  above(input, 'exhaustPressure');
  const nc = atLeast(input, 'compressionExponent', 1);
  const ne = atLeast(input, 'expansionExponent', 1);
  const γ = above(input, 'burnedGamma', 1);
  const loss = fraction(input, 'heatLoss');

  const vClose = volume.at(events.intakeClose);
  const pClose = (charge.trapped * gasConstant * T) / vClose;
  const compressed = (v: number): number => pClose * (vClose / v) ** nc;

  const share = burntAt(input, events);
  const burning = burningPressure(volume, {
    γ,
    from: events.burnStart,
    duration: durationOf(input),
    share,
    startPressure: compressed(volume.at(events.burnStart)),
    heat: charge.heat,
    loss,
  });
  const vEnd = volume.at(events.burnEnd);
  const pEnd = burning(events.burnEnd);
  const expanded = (v: number): number => pEnd * (vEnd / v) ** ne;

  const vBottom = volume.at(Math.PI);
  const ram = vClose < vBottom ? Math.log(pClose / pIn) / Math.log(vBottom / vClose) : 0;
  const exchanged = exchangePressure(input, events, expanded);

  function pressureAt(angle: number): number {
    // Kept as it is where it can be: a remainder would round an event to its wrong side.
    const inside = angle >= -Math.PI && angle <= 3 * Math.PI;
    const θ = inside ? angle : ((((angle + Math.PI) % cycle) + cycle) % cycle) - Math.PI;
    const v = volume.at(θ);
    if (θ >= events.intakeClose + cycle) return compressed(v);
    if (θ < events.intakeClose) return pIn * (vBottom / v) ** ram;
    if (θ < events.burnStart) return compressed(v);
    if (θ <= events.burnEnd) return burning(θ);
    if (θ <= events.exhaustOpen) return expanded(v);
    return exchanged(θ, v);
  }

  return {
    volume,
    charge,
    events,
    closing: { pressure: pClose, volume: vClose },
    compressedAt: (angle) => compressed(volume.at(angle)),
    released: (angle) => charge.heat * share(angle),
    at: pressureAt,
  };
}

/** One mean cycle, sampled. */
export interface CylinderPressure {
  /** Crank angle [rad] from firing TDC, rising from −π to 3π in equal steps. */
  readonly angle: Float64Array;
  /** Pressure [Pa], absolute. */
  readonly pressure: Float64Array;
  readonly model: PressureModel;
  /** The greatest pressure [Pa] between intake closing and exhaust opening, and its angle [rad]. */
  readonly peak: { readonly pressure: number; readonly angle: number };
}

/** The greatest pressure while the valves are shut: the best sample, refined by golden section. */
function peakOf(model: PressureModel): CylinderPressure['peak'] {
  const { burnStart, burnEnd } = model.events;
  // Compression can only rise to TDC or the start of burning, expansion only fall.
  const [from, to] = [Math.min(burnStart, 0), Math.max(burnEnd, 0)];
  if (from >= to) return { pressure: model.at(to), angle: to };
  const { at, value } = maximum((θ) => model.at(θ), from, to, 48);
  return { pressure: value, angle: at };
}

/**
 * The mean cycle of {@link pressureModel} from BDC before firing (−π) to BDC at the end of the intake stroke
 * (3π), `steps` equal steps (default 1440: half a degree), and its peak.
 */
export function pressureCycle(input: PressureInput, steps = 1440): CylinderPressure {
  const model = pressureModel(input);
  const angle = Float64Array.from({ length: steps + 1 }, (_, i) =>
    i === steps ? 3 * Math.PI : -Math.PI + (cycle * i) / steps,
  );
  return { angle, pressure: angle.map((θ) => model.at(θ)), model, peak: peakOf(model) };
}
