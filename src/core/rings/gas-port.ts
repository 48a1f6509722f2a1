import { type PressureInput, pressureCycle } from '../loads/cylinder-pressure.ts';
import { ringCycle, type RingPrecision, type RingTrace } from './ring-cycle.ts';
import { ringDrive, type RingDrive } from './ring-drive.ts';
import { netGas } from './ring-forces.ts';
import { hotGap, ringPack, type RingPack, type RingPackInput, type RingSeat } from './ring-pack.ts';
import {
  greatest,
  greatestShortfall,
  lagOf,
  ringCurves,
  type RingCurves,
  type RingLoads,
  ringLoads,
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

/** The answer for one engine. */
export interface GasPortResult {
  /** Ports as entered, none, and partly plugged, with the ring as it may move. */
  readonly entered: PortedRing;
  readonly unported: PortedRing;
  readonly plugged: PortedRing;
  /** The same three with the upper side clearance shut and the ring on its lower flank. */
  readonly shut: {
    readonly entered: PortedRing;
    readonly unported: PortedRing;
    readonly plugged: PortedRing;
  };
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
  /** Least net gas pressure [Pa] on the bore with the clearance shut and no ports. */
  readonly shutLeastGas: number;
}

/** The greatest value [Pa] of one of a trace's pressures. */
function most(trace: RingTrace, list: Float64Array): number {
  return greatest(trace.angle, list).value;
}

/** The least net gas pressure [Pa] over the steps of a trace. */
function leastGas(pack: RingPack, { angle, cylinder, behind, land }: RingTrace): number {
  return -greatest(
    angle,
    cylinder.map((p, i) => -netGas(pack, p, behind[i] ?? 0, land[i] ?? 0)),
  ).value;
}

function ported(
  pack: RingPack,
  drive: RingDrive,
  seat: RingSeat,
  precision: Partial<RingPrecision>,
): PortedRing {
  const trace = ringCycle(pack, drive, seat, precision);
  const { at, value } = greatestShortfall(trace);
  return {
    shortfall: value,
    shortfallAngle: at,
    lag: lagOf(trace, drive),
    peakShare: most(trace, trace.behind) / most(trace, trace.cylinder),
    trace,
  };
}

/**
 * The gas behind the top ring over one steady cycle, with its holes as entered, without, and with a share of
 * their area plugged; free to move as entered, and with the upper side clearance shut.
 *
 * Cylinder pressure by `pressureCycle`; gas between the rings at the ring's temperature; six paths (upper
 * side clearance, ports, lower side clearance once the ring lifts, both doors at the end gap, the second
 * ring's gap); the ring's height a state of its own (see `ringCycle`). End gaps are brought to running size:
 * the second ring is taken half way between the top ring's temperature and the bore's.
 *
 * Neglected: the spaces behind the second ring and the oil ring, the top land's crevice as a volume, twist
 * and bending of the ring, oil in the gaps, heat exchanged in the holes, waves in the holes.
 * Throws OutOfDomain as `pressureModel` and `ringPack` do.
 */
export function gasPort(
  input: GasPortInput,
  precision: Partial<RingPrecision> = {},
): GasPortResult {
  const hot = { ...input, bore: input.bore };
  const hotGap1 = hotGap(input.ring1Gap, hot);
  const hotGap2 = hotGap(input.ring2Gap, {
    ...hot,
    ringTemperature: (input.ringTemperature + input.boreTemperature) / 2,
  });
  const running = { ...input, ring1Gap: hotGap1, ring2Gap: hotGap2 };
  // The pack is checked first: a ring thicker than its groove is named before a cycle is worked.
  const pack = ringPack({ ...running, portPlugged: 0 });
  const plugged = ringPack(running);
  const unported: RingPack = { ...pack, portArea: 0 };
  const cycle = pressureCycle(input);
  const drive = ringDrive(input, cycle.pressure);

  function three(seat: RingSeat): {
    entered: PortedRing;
    unported: PortedRing;
    plugged: PortedRing;
  } {
    const none = ported(unported, drive, seat, precision);
    if (pack.portArea === 0) return { entered: none, unported: none, plugged: none };
    const all = ported(pack, drive, seat, precision);
    if (plugged.portArea === pack.portArea) return { entered: all, unported: none, plugged: all };
    return {
      entered: all,
      unported: none,
      plugged: plugged.portArea === 0 ? none : ported(plugged, drive, seat, precision),
    };
  }

  const asMoves = three(input.ringSeat);
  const shut = input.ringSeat === 'shut' ? asMoves : three('shut');
  const curves = ringCurves(asMoves.entered.trace, drive);
  return {
    ...asMoves,
    shut,
    pack,
    drive,
    curves,
    loads: ringLoads(pack, curves, drive),
    peakPressure: cycle.peak.pressure,
    peakLand: most(asMoves.entered.trace, asMoves.entered.trace.land),
    leak: asMoves.entered.trace.out,
    hotGap1,
    hotGap2,
    offLower: timeOffLower(asMoves.entered.trace),
    shutLeastGas: leastGas(pack, shut.unported.trace),
  };
}
