import type { Value } from '../../../calculators/define.ts';
import {
  materialOf,
  metalOf,
  rodMaterials,
  type RodMaterial,
} from '../../../calculators/rods/rod-materials.choices.ts';
import { OutOfDomain } from '../../../core/refuse.ts';
import {
  rodAreas,
  rodForces,
  type RodDuty,
  type RodTargets,
} from '../../../core/rods/rod-materials.ts';
import { numberOf, numbersOf } from '../read.ts';

/** One metal on the baseline's duty: shank masses [kg] at three ways of being equal. */
export interface MetalBar {
  readonly id: RodMaterial;
  readonly label: string;
  readonly kind: string;
  /** At the baseline's own section. */
  readonly section: number;
  readonly margin: number;
  readonly stretch: number;
}

const dutyNames = [
  'maxSpeed',
  'stroke',
  'rodLength',
  'reciprocatingMass',
  'bore',
  'peakPressure',
  'crankcasePressure',
] as const satisfies readonly (keyof RodDuty)[];
const targetNames = [
  'rodMargin',
  'rodNotchFactor',
  'stretchWanted',
  'stretchFactor',
  'shankLength',
] as const satisfies readonly (keyof RodTargets)[];

/**
 * Every metal of the table on one duty, in the order of the table; empty while a number is missing or has no
 * meaning.
 */
export function metalBars(input: Readonly<Record<string, Value>> | undefined): readonly MetalBar[] {
  if (input === undefined) return [];
  const duty = numbersOf(input, dutyNames);
  const targets = numbersOf(input, targetNames);
  const area = numberOf(input, 'shankArea');
  if (duty === undefined || targets === undefined || area === undefined) return [];
  try {
    const forces = rodForces(duty);
    return rodMaterials.map((id) => {
      const metal = metalOf(id);
      const areas = rodAreas(forces, metal, targets);
      const perArea = metal.density * duty.rodLength;
      return {
        id,
        label: materialOf(id).label,
        kind: materialOf(id).kind,
        section: perArea * area,
        margin: perArea * areas.marginArea,
        stretch: perArea * areas.stretchArea,
      };
    });
  } catch (error) {
    if (error instanceof OutOfDomain) return [];
    throw error;
  }
}
