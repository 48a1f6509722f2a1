import table from '../../../content/tables/tungsten-classes.json' with { type: 'json' };
import { toSI } from '../../units/units.ts';
import type { ChoiceEntry } from '../define.ts';

/** The classes of tungsten heavy alloy in ASTM B777. */
export type SlugClass = keyof typeof table;

/** Which alloy a slug is made of. */
export const slugClass = {
  type: 'choice',
  name: 'slugClass',
  label: 'Alloy, by ASTM B777',
  symbol: 'K_W',
  options: {
    'class-1': 'class 1, 90 % tungsten',
    'class-2': 'class 2, 92.5 % tungsten',
    'class-3': 'class 3, 95 % tungsten',
    'class-4': 'class 4, 97 % tungsten',
  },
  demo: { baseline: 'class-1', candidate: 'class-3' },
} as const satisfies ChoiceEntry<SlugClass>;

/** What the standard allows the density of a class to be [kg/m³]. */
export function classRange(of: SlugClass): { readonly least: number; readonly most: number } {
  const { least, most } = table[of];
  return { least: toSI(Number(least), 'g/cm3'), most: toSI(Number(most), 'g/cm3') };
}
