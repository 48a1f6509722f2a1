import { speedAtEnergy } from '../../../core/inertia/geared-inertia.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** What turns of one set: inertia [kg·m²], swing of energy [J], speeds [rad/s], the swing over the mean. */
export interface TurningMass {
  readonly engineInertia: number;
  readonly energySwing: number;
  readonly meanSpeed: number;
  readonly lowest: number;
  readonly highest: number;
  readonly spread: number;
  readonly coefficient: number;
}

/** What turns of one set; `undefined` while a number is missing. */
export function turningMass({ input, output }: FigureSet): TurningMass | undefined {
  const found = {
    engineInertia: numberOf(input, 'engineInertia'),
    energySwing: numberOf(input, 'energySwing'),
    meanSpeed: numberOf(input, 'meanSpeed'),
    lowest: numberOf(output, 'lowest'),
    highest: numberOf(output, 'highest'),
    spread: numberOf(output, 'spread'),
    coefficient: numberOf(output, 'coefficient'),
  };
  return Object.values(found).includes(undefined) ? undefined : (found as TurningMass);
}

/** The speed [rad/s] at a part of one swing, 0 to 1, the energy rising and falling as a cosine: for form. */
export function speedAt(own: TurningMass, part: number): number {
  const share = (1 - Math.cos(2 * Math.PI * part)) / 2;
  return speedAtEnergy(own, Math.min(1, Math.max(0, share)));
}

/** Decimals with which speeds [in the unit shown] that differ by `spread` can be told apart. */
export function speedDecimals(spread: number): number {
  return spread > 0 ? Math.min(6, Math.max(0, Math.ceil(1 - Math.log10(spread)))) : 0;
}

/** The radius of a disc of one metal and thickness beside that of the greatest: inertia goes by its fourth power. */
export function discShare(inertia: number, greatest: number): number {
  return (inertia / greatest) ** 0.25;
}

/** The inertia of a disc that is drawn `times` as large in radius. */
export function inertiaOfDisc(inertia: number, times: number): number {
  return inertia * times ** 4;
}
