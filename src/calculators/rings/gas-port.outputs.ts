import type { MaybeOutput, NumberOutput, SeriesOutput } from '../define.ts';
import {
  angle,
  axis,
  curve,
  gasMass,
  length,
  maybe,
  percent,
  pressure,
  ratio,
  smallArea,
  smallEnergy,
  smallVolume,
} from '../output.ts';

/** The numbers of the gas port, from what the ports are for to how well the sum closes. */
export const gasPortOutputs = {
  shortfall: pressure('Δp', 'Greatest shortfall behind the ring, ports as entered', {
    phrase: 'The greatest shortfall of the pressure behind the top ring from the cylinder’s',
    main: true,
  }),
  shortfallUnported: pressure('Δp_0', 'The same with no ports', { phrase: 'With no ports it' }),
  shortfallPlugged: pressure('Δp_q', 'The same with the stated share plugged', {
    phrase: 'With the stated share of the ports plugged it',
  }),
  shutShortfall: pressure('Δp_s', 'Upper side clearance shut: shortfall, ports as entered', {
    phrase: 'With the upper side clearance shut by oil or carbon it',
  }),
  shutShortfallUnported: pressure('Δp_s0', 'Clearance shut, no ports', {
    phrase: 'With the clearance shut and no ports it',
  }),
  shutShortfallPlugged: pressure('Δp_sq', 'Clearance shut, the stated share plugged', {
    phrase: 'With the clearance shut and that share of the ports plugged it',
  }),
  lag: maybe(angle('φ', 'Late at 15 bar rising, ports as entered')),
  lagUnported: maybe(angle('φ_0', 'Late, no ports')),
  lagPlugged: maybe(angle('φ_q', 'Late, share plugged')),
  shutLag: maybe(angle('φ_s', 'Late, clearance shut, ports as entered')),
  shutLagUnported: maybe(angle('φ_s0', 'Late, clearance shut, no ports')),
  shutLagPlugged: maybe(angle('φ_sq', 'Late, clearance shut, share plugged')),
  shortfallAngle: angle('θ_Δ', 'Crank angle of the greatest shortfall'),
  peakShare: ratio('q_p', 'Peak behind over peak above, ports as entered'),
  peakShareUnported: ratio('q_p0', 'The same, no ports'),
  shutPeakShare: ratio('q_ps', 'Clearance shut, ports as entered'),
  shutPeakShareUnported: ratio('q_ps0', 'Clearance shut, no ports'),
  shutPeakSharePlugged: ratio('q_psq', 'Clearance shut, share plugged'),
  peakPressure: pressure('p_max', 'Peak in the cylinder (absolute)'),
  peakLand: pressure('p_2', 'Greatest pressure on the second land (absolute)'),
  leak: gasMass('m_L', 'Gas past the second ring, each cycle and cylinder'),
  offLower: percent('q_off', 'Share of the cycle off the lower flank'),
  liftAngle: maybe(angle('θ_lift', 'The ring first leaves its lower flank at')),
  landingAngle: maybe(angle('θ_land', 'It is back on its lower flank at')),
  tensionPressure: pressure('p_t', 'Pressure on the bore from tension', {
    phrase: 'The pressure of the ring on the bore by its own spring',
  }),
  gasCompression: pressure('p_g,c', 'Mean net gas pressure on the bore, compression'),
  gasPower: pressure('p_g,p', 'Mean net gas pressure, power', {
    phrase: 'The mean gas pressure on the bore that comes on top over the power stroke',
  }),
  gasExhaust: pressure('p_g,e', 'Mean net gas pressure, exhaust'),
  gasIntake: pressure('p_g,i', 'Mean net gas pressure, intake'),
  greatestGas: pressure('p_g,max', 'Greatest net gas pressure on the bore'),
  leastGas: pressure('p_g,min', 'Least net gas pressure on the bore'),
  gasOverTension: maybe(ratio('q_gt', 'Greatest gas over tension')),
  shutLeastGas: pressure('p_gs,min', 'Clearance shut, no ports: least net gas pressure'),
  frictionCompressionLow: smallEnergy('W_c,lo', 'Friction work, compression, coefficient 0.02'),
  frictionCompressionHigh: smallEnergy('W_c,hi', 'Friction work, compression, coefficient 0.12'),
  frictionPowerLow: smallEnergy('W_p,lo', 'Friction work, power, coefficient 0.02'),
  frictionPowerHigh: smallEnergy('W_p,hi', 'Friction work, power, coefficient 0.12'),
  frictionExhaustLow: smallEnergy('W_e,lo', 'Friction work, exhaust, coefficient 0.02'),
  frictionExhaustHigh: smallEnergy('W_e,hi', 'Friction work, exhaust, coefficient 0.12'),
  frictionIntakeLow: smallEnergy('W_i,lo', 'Friction work, intake, coefficient 0.02'),
  frictionIntakeHigh: smallEnergy('W_i,hi', 'Friction work, intake, coefficient 0.12'),
  frictionLow: smallEnergy('W_lo', 'Friction work of the top ring, whole cycle, coefficient 0.02'),
  frictionHigh: smallEnergy('W_hi', 'The same, coefficient 0.12'),
  behindVolume: smallVolume('V_b', 'Volume behind the ring'),
  sideDoor: smallArea('A_side', 'Open area of the side clearance'),
  portDoor: smallArea('A_po', 'Area of the ports as drilled'),
  hotGap1: length('s_1h', 'End gap of the top ring, running'),
  hotGap2: length('s_2h', 'End gap of the second ring, running'),
  massDrift: ratio(
    'ε_m',
    'What a cycle fails to repeat, at worst, over the gas behind ring and on land',
  ),
  cylinderCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_1', 'Pressure in the cylinder (absolute)'),
  ),
  behindCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_b', 'Pressure behind the ring (absolute)'),
  ),
  landCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_2', 'Pressure on the second land (absolute)'),
  ),
  liftCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('length', 'x', 'Height of the ring over its lower flank'),
  ),
  loadCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_g', 'Net gas pressure on the bore'),
  ),
  behindUnportedCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_b0', 'Behind the ring, no ports (absolute)'),
  ),
  landUnportedCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_20', 'Second land, no ports (absolute)'),
  ),
  liftUnportedCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('length', 'x_0', 'Height of the ring, no ports'),
  ),
  behindShutUnportedCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_bs0', 'Behind the ring, clearance shut, no ports (absolute)'),
  ),
  landShutUnportedCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_2s0', 'Second land, clearance shut, no ports (absolute)'),
  ),
  behindShutCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_bs', 'Behind the ring, clearance shut, ports as entered (absolute)'),
  ),
  landShutCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_2s', 'Second land, clearance shut, ports as entered (absolute)'),
  ),
  behindShutPluggedCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_bsq', 'Behind the ring, clearance shut, share plugged (absolute)'),
  ),
  landShutPluggedCurve: curve(
    axis('angle', 'θ', 'crank angle from firing TDC'),
    axis('pressure', 'p_2sq', 'Second land, clearance shut, share plugged (absolute)'),
  ),
} as const satisfies Readonly<Record<string, NumberOutput | MaybeOutput | SeriesOutput>>;
