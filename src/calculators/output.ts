import type { Kind } from '../units/kinds.ts';
import type { MaybeOutput, NumberOutput, SeriesOutput } from './define.ts';

/**
 * Makers of a calculator's outputs, one for each way a result of the trade is written. Where a kind has several
 * ways (a length in millimetres, or in microns where it is a fit), the maker's name says which.
 */

type Own = Omit<NumberOutput, 'type' | 'kind' | 'symbol' | 'label'>;
type Maker = (symbol: string, label: string, own?: Own) => NumberOutput;

function output(kind: Kind, metric?: string, inch?: string): Maker {
  const units = {
    ...(metric === undefined ? {} : { metric }),
    ...(inch === undefined ? {} : { inch }),
  };
  return (symbol, label, own) => ({ type: 'number', kind, ...units, symbol, label, ...own });
}

export const length = output('length');
/** A clearance, a gap, a growth: microns, or thousandths of an inch. */
export const fineLength = output('length', 'um', 'thou');
export const distance = output('length', 'm', 'ft');
export const area = output('area');
/** In square inches, where the default of the inch system would be too coarse. */
export const smallArea = output('area', 'mm2', 'in2');
/** What an engine or a cylinder displaces. */
export const volume = output('volume');
export const smallVolume = output('volume', 'mm3', 'in3');
export const secondMoment = output('secondMoment');
export const mass = output('mass');
export const heavyMass = output('mass', 'kg', 'lb');
/** A charge of gas or of fuel. */
export const gasMass = output('mass', 'mg', 'mg');
export const density = output('density');
export const gasDensity = output('density', 'kg/m3', 'lb/in3');
/** Grams at a radius: the machine's inch system keeps the grams. */
export const unbalance = output('unbalance', 'gmm', 'gin');
export const inertia = output('inertia');
export const engineInertia = output('inertia', 'kgm2', 'lbin2');
export const angle = output('angle');
/** Where something points, about the crank. */
export function direction(symbol: string, label: string, own?: Own): NumberOutput {
  return angle(symbol, label, { ...own, direction: true });
}
export const crankSpeed = output('angularSpeed');
export const angularSpeed = output('angularSpeed', 'rad/s', 'rad/s');
export const angularAcceleration = output('angularAcceleration');
/** How fast a crank gains speed, in revolutions a minute each second. */
export const rateOfSpeed = output('angularAcceleration', 'rpm/s', 'rpm/s');
export const speed = output('speed');
/** Piston speed has its own inch unit in the trade. */
export const pistonSpeed = output('speed', 'm/s', 'ft/min');
/** The number of a balance quality grade. */
export const gradeSpeed = output('speed', 'mm/s', 'mm/s');
export const acceleration = output('acceleration');
export const load = output('force');
export const force = output('force', 'N', 'lbf');
export const torque = output('torque');
export const torsionalStiffness = output('torsionalStiffness');
export const frequency = output('frequency');
export const energy = output('energy');
export const smallEnergy = output('energy', 'J', 'ftlbf');
export const power = output('power');
/** Of a gas. */
export const pressure = output('pressure');
/** Between two parts. */
export const contactPressure = output('pressure', 'MPa', 'psi');
export const stress = output('pressure', 'MPa', 'ksi');
export const modulus = output('pressure', 'GPa', 'Mpsi');
export const temperature = output('temperature');
export const expansion = output('expansion');
export const time = output('time');
export const shortTime = output('time', 'ms', 'ms');
export const ratio = output('ratio');
export const percent = output('ratio', 'pct', 'pct');
export const count = output('count');
/** A clearance over a diameter. */
export const clearanceRatio = output('ratio', 'um/mm', 'thou/in');

/** A number that may not exist for these inputs; its reason then stands in its place. */
export function maybe(made: NumberOutput): MaybeOutput {
  return { ...made, type: 'maybe' };
}

/** What an axis of a curve counts. */
export interface Axis {
  readonly label: string;
  readonly symbol: string;
  readonly kind: Kind;
}

/** An axis of a curve: of this kind, symbol and label. */
export function axis(kind: Kind, symbol: string, label: string): Axis {
  return { label, symbol, kind };
}

/** A curve, for figures and CSV; its own label unless it is that of the vertical axis. */
export function curve(x: Axis, y: Axis, label = y.label): SeriesOutput {
  return { type: 'series', label, x, y };
}
