import sizes from '../../../content/tables/drill-sizes.json' with { type: 'json' };
import { drillsByStep, type ListedDrill } from '../../core/balance/drill-sizes.ts';
import { toSI } from '../../units/units.ts';
import type { ChoiceEntry } from '../define.ts';

/** Which drills there are to choose from. */
export type DrillList = 'metric' | 'fraction' | 'index' | 'both';

export const drillList = {
  type: 'choice',
  name: 'drillList',
  label: 'Drills at hand',
  symbol: 'K_d',
  options: {
    metric: 'metric, every half millimetre',
    fraction: 'inch fractions, every 1/64',
    index: 'inch fractions, numbers and letters',
    both: 'metric and inch fractions',
  },
  demo: { baseline: 'metric', candidate: 'metric' },
} as const satisfies ChoiceEntry<DrillList>;

/** `1 3/8 in` of eighty-eight sixty-fourths. */
function fractionName(sixtyFourths: number): string {
  const whole = Math.floor(sixtyFourths / 64);
  let [part, of] = [sixtyFourths % 64, 64];
  while (part > 0 && part % 2 === 0) [part, of] = [part / 2, of / 2];
  const fraction = part === 0 ? '' : `${part}/${of}`;
  return `${[whole === 0 ? '' : String(whole), fraction].filter(Boolean).join('\u00a0')}\u00a0in`;
}

const metric = drillsByStep(0.5e-3, 2, 120, (halves) => `${halves / 2}\u00a0mm`);
const fraction = drillsByStep(toSI(1 / 64, 'in'), 3, 112, fractionName);
const gauges = Object.values(sizes).map(({ called, size }) => ({
  name: called,
  diameter: toSI(Number(size), 'in'),
}));
/** A letter that is also a fraction is called by the fraction. */
const ownGauges = gauges.filter(
  ({ diameter }) => !fraction.some((one) => Math.abs(one.diameter - diameter) < 1e-6),
);

function fromThin(...lists: readonly (readonly ListedDrill[])[]): readonly ListedDrill[] {
  return lists.flat().toSorted((one, other) => one.diameter - other.diameter);
}

/** The drills of each list, from thin to thick. */
export const drillLists: Readonly<Record<DrillList, readonly ListedDrill[]>> = {
  metric,
  fraction,
  index: fromThin(fraction, ownGauges),
  both: fromThin(metric, fraction),
};
