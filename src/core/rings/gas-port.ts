import {
  type CylinderPressure,
  type PressureInput,
  pressureCycle,
} from '../loads/cylinder-pressure.ts';
import { above, atLeast, finite } from '../refuse.ts';
import { ringCycle, type RingTrace } from './ring-cycle.ts';
import { ringDrive, steepest, type RingDrive } from './ring-drive.ts';
import { ringCurves, type RingCurves, type RingLoads, ringLoads } from './ring-loads.ts';
import { hotGap, ringPack, type RingPack, type RingPackInput, type RingSeat } from './ring-pack.ts';
import {
  gasOf,
  greatest,
  greatestShortfall,
  lagOf,
  least,
  liftOf,
  timeOffLower,
} from './ring-summary.ts';

/** An engine, its top ring and its holes. SI; end gaps as measured cold in the bore. */
export interface GasPortInput extends PressureInput, RingPackInput {
  readonly maxSpeed: number;
  readonly crankcasePressure: number;
  /** [1/K], [1/K], [K]. */
  readonly ringExpansion: number;
  readonly boreExpansion: number;
  readonly boreTemperature: number;
  readonly ringSeat: RingSeat;
}

/** What one way of porting does. */
export interface PortedRing {
  /** [Pa] by which the pressure behind falls short of the cylinder's at most, and where [rad]. */
  readonly shortfall: number;
  readonly shortfallAngle: number;
  /** [rad] late at 15 bar rising; or which of the two never gets there. */
  readonly lag: number | 'cylinder' | 'behind';
  /** Greatest pressure behind over greatest pressure in the cylinder. */
  readonly peakShare: number;
  readonly trace: RingTrace;
}

/** The ring with its ports as entered, with none, and with a share of them plugged. */
export interface PortedThree {
  readonly entered: PortedRing;
  readonly unported: PortedRing;
  readonly plugged: PortedRing;
}

/** The answer for one engine: the three with the ring as it may move, and more. */
export interface GasPortResult extends PortedThree {
  /** The same three with the upper side clearance shut and the ring on its lower flank. */
  readonly shut: PortedThree;
  readonly pack: RingPack;
  readonly drive: RingDrive;
  /** Of the ring with its ports as entered. */
  readonly curves: RingCurves;
  readonly loads: RingLoads;
  readonly peakPressure: number;
  readonly peakLand: number;
  /** Gas [kg] that leaves past the second ring in a cycle. */
  readonly leak: number;
  /** Hot end gaps [m]. */
  readonly hotGap1: number;
  readonly hotGap2: number;
  /** Share of the cycle off the lower flank. */
  readonly offLower: number;
  /** Crank angle [rad] at which the ring first leaves its lower flank and last comes down on it, if it does. */
  readonly leaves: number | undefined;
  readonly lands: number | undefined;
  /** Least net gas pressure [Pa] on the bore with the clearance shut and no ports. */
  readonly shutLeastGas: number;
  /** What a cycle fails to repeat (see `RingTrace`), in the one of the six rings that repeats worst. */
  readonly drift: number;
}

/** Intervals of a cycle's tables: eighths of a degree, or twice as many where the pressure is very steep. */
const eighths = 5760;
/** Share of the pressure that an eighth of a degree may change. */
const gentle = 0.02;

/** The cylinder's cycle in enough intervals. */
function fineCycle(input: PressureInput, fineness: number): CylinderPressure {
  const steps = eighths * fineness;
  const cycle = pressureCycle(input, steps);
  const rough = steepest(cycle.pressure, 0, steps) > gentle / fineness;
  return rough ? pressureCycle(input, 2 * steps) : cycle;
}

/** End gaps [m] at running size. Throws OutOfDomain for what `hotGap` takes without a question. */
function hotGaps(input: GasPortInput): { readonly hotGap1: number; readonly hotGap2: number } {
  atLeast(input, 'ring1Gap');
  atLeast(input, 'ring2Gap');
  finite(input, 'ringExpansion');
  finite(input, 'boreExpansion');
  above(input, 'boreTemperature');
  const second = (input.ringTemperature + input.boreTemperature) / 2;
  return {
    hotGap1: hotGap(input.ring1Gap, input),
    hotGap2: hotGap(input.ring2Gap, { ...input, ringTemperature: second }),
  };
}

function ported(pack: RingPack, drive: RingDrive, seat: RingSeat): PortedRing {
  const trace = ringCycle(pack, drive, seat);
  const { angle, behind, cylinder } = trace;
  const { at, value } = greatestShortfall(trace);
  return {
    shortfall: value,
    shortfallAngle: at,
    lag: lagOf(trace, drive),
    peakShare: greatest(angle, behind).value / greatest(angle, cylinder).value,
    trace,
  };
}

/** The three ways of porting, each worked once. */
function three(
  { full, plugged }: { readonly full: RingPack; readonly plugged: RingPack },
  drive: RingDrive,
  seat: RingSeat,
): PortedThree {
  const unported = ported({ ...full, portArea: 0 }, drive, seat);
  const entered = full.portArea === 0 ? unported : ported(full, drive, seat);
  if (plugged.portArea === full.portArea) return { entered, unported, plugged: entered };
  if (plugged.portArea === 0) return { entered, unported, plugged: unported };
  return { entered, unported, plugged: ported(plugged, drive, seat) };
}

/**
 * The gas behind the top ring over one steady cycle, with its holes as entered, without, and with a share of
 * their area plugged; free to move as entered, and with the upper side clearance shut.
 *
 * Cylinder pressure by `pressureCycle`; gas between the rings at the ring's temperature; six paths (upper
 * side clearance, ports, lower side clearance once the ring lifts, both doors at the end gap, the second
 * ring's gap); the ring's height a state of its own (see `ringCycle`). End gaps are brought to running size:
 * the second ring is taken half way between the top ring's temperature and the bore's. Steps are
 * `fineness` times as short as usual, a whole number; errors fall with its square.
 *
 * Neglected: the spaces behind the second ring and the oil ring, the top land's crevice as a volume, twist
 * and bending of the ring, oil in the gaps, heat exchanged in the holes, waves in the holes.
 * Throws OutOfDomain as `pressureModel` and `ringPack` do, and for a negative cold gap, an expansion that is no
 * number, or no bore temperature.
 */
export function gasPort(input: GasPortInput, fineness = 1): GasPortResult {
  const { hotGap1, hotGap2 } = hotGaps(input);
  const running = { ...input, ring1Gap: hotGap1, ring2Gap: hotGap2 };
  // The pack is checked first: a ring thicker than its groove is named before a cycle is worked.
  const packs = { full: ringPack({ ...running, portPlugged: 0 }), plugged: ringPack(running) };
  const cycle = fineCycle(input, fineness);
  const drive = ringDrive(input, cycle.pressure, fineness);
  const moving = three(packs, drive, input.ringSeat);
  const shut = input.ringSeat === 'shut' ? moving : three(packs, drive, 'shut');
  const { trace } = moving.entered;
  const curves = ringCurves(trace, drive);
  const shutTrace = shut.unported.trace;
  const rings = [moving, shut].flatMap((one) => [one.entered, one.unported, one.plugged]);
  return {
    ...moving,
    shut,
    pack: packs.full,
    drive,
    curves,
    loads: ringLoads(packs.full, curves, drive),
    peakPressure: cycle.peak.pressure,
    peakLand: greatest(trace.angle, trace.land).value,
    leak: trace.outflow,
    hotGap1,
    hotGap2,
    offLower: timeOffLower(trace),
    ...liftOf(trace),
    shutLeastGas: least(shutTrace.angle, gasOf(packs.full, shutTrace)),
    drift: Math.max(...rings.map((ring) => ring.trace.drift)),
  };
}
