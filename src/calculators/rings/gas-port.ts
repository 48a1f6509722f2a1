import { at } from '../../core/math/at.ts';
import {
  gasPort as gasPortOf,
  type GasPortResult,
  type PortedRing,
} from '../../core/rings/gas-port.ts';
import { ringCurves, type RingCurves } from '../../core/rings/ring-loads.ts';
import { portArea } from '../../core/rings/ring-pack.ts';
import { defineCalculator, type Absent, type Series } from '../define.ts';
import { portKind, ringSeat } from './gas-port.choices.ts';
import { spareInputs, withUsual } from './gas-port.engine.ts';
import { gasPortOutputs } from './gas-port.outputs.ts';
import { gasPortSteps } from './gas-port.steps.ts';
import {
  bore,
  compressionRatio,
  maxSpeed,
  portCount,
  portDiameter,
  portPlugged,
  ring1Gap,
  ring1Height,
  ring1Radial,
  ring1Tension,
  ring2Gap,
  ringBackClearance,
  ringSideClearance,
  ringTemperature,
  rodLength,
  secondLandClearance,
  secondLandHeight,
  stroke,
  volumetricEfficiency,
} from '../quantities.ts';

/** Points of a curve: every one and a half degrees. */
const points = 481;

const still: Absent = { absent: 'the ring stays where it is' };

function lagOrReason({ lag }: PortedRing): number | Absent {
  if (lag === 'cylinder') return { absent: 'the cylinder never rises to 15 bar' };
  if (lag === 'behind') return { absent: 'the pressure behind never rises to 15 bar' };
  return lag;
}

function thin(list: Float64Array): Float64Array {
  const every = (list.length - 1) / (points - 1);
  return Float64Array.from({ length: points }, (_, i) => at(list, i * every));
}

/** How far behind the cylinder the pressure stays, for the six ways of porting. */
function fillingOf({ entered, unported, plugged, shut }: GasPortResult) {
  return {
    shortfall: entered.shortfall,
    shortfallUnported: unported.shortfall,
    shortfallPlugged: plugged.shortfall,
    shutShortfall: shut.entered.shortfall,
    shutShortfallUnported: shut.unported.shortfall,
    shutShortfallPlugged: shut.plugged.shortfall,
    lag: lagOrReason(entered),
    lagUnported: lagOrReason(unported),
    lagPlugged: lagOrReason(plugged),
    shutLag: lagOrReason(shut.entered),
    shutLagUnported: lagOrReason(shut.unported),
    shutLagPlugged: lagOrReason(shut.plugged),
    shortfallAngle: entered.shortfallAngle,
    peakShare: entered.peakShare,
    peakShareUnported: unported.peakShare,
    shutPeakShare: shut.entered.peakShare,
    shutPeakShareUnported: shut.unported.peakShare,
    shutPeakSharePlugged: shut.plugged.peakShare,
  };
}

/** What presses on the bore [Pa]. */
function loadsOf({ loads, pack, shutLeastGas }: GasPortResult) {
  const { tensionPressure } = pack;
  const noTension: Absent = { absent: 'the ring has no tension' };
  return {
    tensionPressure,
    gasCompression: loads.gas.compression,
    gasPower: loads.gas.power,
    gasExhaust: loads.gas.exhaust,
    gasIntake: loads.gas.intake,
    greatestGas: loads.greatestGas,
    leastGas: loads.leastGas,
    gasOverTension: tensionPressure > 0 ? loads.greatestGas / tensionPressure : noTension,
    shutLeastGas,
  };
}

/** Friction work [J] over each stroke and the whole cycle, by the low and the high coefficient. */
function frictionOf({ loads: { slide } }: GasPortResult) {
  const whole = slide.compression + slide.power + slide.exhaust + slide.intake;
  return {
    frictionCompressionLow: 0.02 * slide.compression,
    frictionCompressionHigh: 0.12 * slide.compression,
    frictionPowerLow: 0.02 * slide.power,
    frictionPowerHigh: 0.12 * slide.power,
    frictionExhaustLow: 0.02 * slide.exhaust,
    frictionExhaustHigh: 0.12 * slide.exhaust,
    frictionIntakeLow: 0.02 * slide.intake,
    frictionIntakeHigh: 0.12 * slide.intake,
    frictionLow: 0.02 * whole,
    frictionHigh: 0.12 * whole,
  };
}

/** The curves of the ring as it moves and with the clearance shut; where two are the same ring, they are made once. */
function curvesOf(result: GasPortResult) {
  const { curves, drive, loads, entered, unported, shut } = result;
  const made = new Map([[entered, curves]]);
  function madeOnce(ring: PortedRing): RingCurves {
    const own = made.get(ring) ?? ringCurves(ring.trace, drive);
    made.set(ring, own);
    return own;
  }
  const none = madeOnce(unported);
  const [shutNone, shutAll, shutSome] = [shut.unported, shut.entered, shut.plugged].map(
    madeOnce,
  ) as [RingCurves, RingCurves, RingCurves];
  const x = thin(curves.angle);
  const seen = (list: Float64Array): Series => ({ x, y: thin(list) });
  return {
    cylinderCurve: seen(curves.cylinder),
    behindCurve: seen(curves.behind),
    landCurve: seen(curves.land),
    liftCurve: seen(curves.lift),
    loadCurve: seen(loads.curve),
    behindUnportedCurve: seen(none.behind),
    landUnportedCurve: seen(none.land),
    liftUnportedCurve: seen(none.lift),
    behindShutUnportedCurve: seen(shutNone.behind),
    landShutUnportedCurve: seen(shutNone.land),
    behindShutCurve: seen(shutAll.behind),
    landShutCurve: seen(shutAll.land),
    behindShutPluggedCurve: seen(shutSome.behind),
    landShutPluggedCurve: seen(shutSome.land),
  };
}

export const gasPort = defineCalculator({
  id: 'gas-port',
  title: 'Gas ports',
  pace: 'idle',
  purpose:
    'How closely the pressure behind the top ring follows the cylinder, with holes, without them and with some of them plugged.',
  asks: [
    'ringSideClearance',
    'portCount',
    'portDiameter',
    'maxSpeed',
    'ringSeat',
    'compressionRatio',
  ],
  answers: ['shortfall', 'shortfallUnported', 'shutShortfall', 'lag', 'peakPressure', 'leak'],
  inputs: {
    ringSideClearance,
    portCount,
    portDiameter,
    portPlugged,
    ringSeat,
    portKind,
    maxSpeed,
    bore,
    stroke,
    rodLength,
    compressionRatio,
    volumetricEfficiency,
    ring1Height,
    ring1Radial,
    ring1Tension,
    ring1Gap,
    ring2Gap,
    ringBackClearance,
    secondLandHeight,
    secondLandClearance,
    ringTemperature,
    ...spareInputs,
  },
  outputs: gasPortOutputs,
  compute: (given) => {
    const input = withUsual(given);
    const result = gasPortOf(input);
    const { pack } = result;
    return {
      ...fillingOf(result),
      ...loadsOf(result),
      ...frictionOf(result),
      ...curvesOf(result),
      peakPressure: result.peakPressure,
      peakLand: result.peakLand,
      leak: result.leak,
      offLower: result.offLower,
      liftAngle: result.leaves ?? still,
      landingAngle: result.lands ?? still,
      behindVolume: pack.behindVolume,
      sideDoor: pack.girth * pack.clearance,
      portDoor: portArea(input.portCount, input.portDiameter, input.portKind),
      hotGap1: result.hotGap1,
      hotGap2: result.hotGap2,
      massDrift: result.drift,
    };
  },
  steps: gasPortSteps,
  limits: [
    {
      id: 'collapse',
      holds: (_, { leastGas, tensionPressure }) => leastGas + tensionPressure >= 0,
      say: 'At some crank angle the gas on the face outweighs tension and the gas behind: the ring leaves the bore there and gas blows past it. The model goes on as if it stayed.',
    },
    {
      id: 'butting',
      holds: (_, { hotGap1, hotGap2 }) => hotGap1 > 0 && hotGap2 > 0,
      say: 'Hot, the ends of a ring meet. A ring whose ends butt breaks its land: look at the end gap before anything else.',
    },
    {
      id: 'steady',
      holds: (_, { massDrift }) => massDrift <= 1e-3,
      say: 'The cycle does not repeat itself, with the ports as entered, without them or with some plugged: the ring moves otherwise each time. The numbers are those of one cycle of many.',
    },
    {
      id: 'tight',
      holds: (input) => input.ringSideClearance >= 10e-6,
      say: 'Below a hundredth of a millimetre oil, carbon, a twisted ring and an uneven groove decide what passes, and no formula for a clean flat gap does.',
    },
  ],
  validity: [],
  assumptions: [
    'The gas between the rings is as warm as the ring, all the time. It was found that gas that leaks past rings leaves at about the temperature of the piston’s surface.',
    'The side clearance is a clean, flat, even gap. With oil in it less passes, at a tilt more: the flow goes with the third power of the local height.',
    'The ring is stiff and flat. It neither twists nor bends, lifts all round at once, and stops dead where it lands. A flight takes a few degrees of crank; squeezing out the oil takes longer and is left out.',
    'Under the closed flank of a ring the pressure falls as the flank factor says. Nobody can measure it. Between a half and one it moves the speed at which the ring lifts on compression by half as much again.',
    'Gas passes the end gap by two paths: from the top land straight down, and from behind the ring through the gap over the lower flank, which counts with the height that the ring has lifted and 0.005 mm for waviness (common practice, no source).',
    'The space behind the second ring is left out, so the second land fills faster and higher than in the engine. The top land’s crevice is taken at the pressure of the cylinder.',
    'Within 0.02 % of equal pressures a hole’s flow is taken straight. The shortfall is overstated there by at most that share of the pressure, 0.014 bar at 70 bar.',
    'The length of a hole counts only in its discharge coefficient. A hole of ten diameters has less than a short one; waves in it are left out.',
    'Cylinder pressure is the mean cycle of the topic of that name, at full throttle, with the volumetric efficiency at this speed.',
    'Friction is a band, because the coefficient is one: near the dead centres it is ten times what it is at mid-stroke.',
    'Results are those of steps ten times as short to one part in a hundred, or to 0.01 bar and 0.01° where that is more. A flying ring that just meets or just misses a flank is the exception: what it does next hangs on less than is known of any engine.',
  ],
  cautions: ['ports', 'rings'],
  sources: [
    'furuhama-tada-1961',
    'heywood-1988',
    'namazian-heywood-1982',
    'piston-ring-manual-2008',
  ],
  sweep: { input: 'ringSideClearance', output: 'shortfallUnported' },
  solve: { input: 'ringSideClearance', output: 'shortfallUnported' },
  exercise: {
    ask: 'sideDoor',
    tolerance: 0.02,
    given: { ringSideClearance: 0.4, bore: 0.12, ring1Radial: 0.12 },
    also: [
      {
        kind: 'number',
        ask: 'tensionPressure',
        given: { ring1Tension: 0.25, bore: 0.12, ring1Height: 0.15 },
      },
      { kind: 'choice', ask: 'sideDoor' },
      {
        kind: 'order',
        ask: 'tensionPressure',
        given: { ring1Tension: 0.25, bore: 0.12, ring1Height: 0.15 },
      },
      { kind: 'read', ask: 'behindCurve', between: [-90, 90], given: { ringSideClearance: 0.2 } },
    ],
  },
});
