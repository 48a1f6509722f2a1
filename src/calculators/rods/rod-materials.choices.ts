import table from '../../../content/tables/rod-materials.json' with { type: 'json' };
import type { RodMetal } from '../../core/rods/rod-materials.ts';
import { toSI } from '../../units/units.ts';
import type { ChoiceEntry } from '../define.ts';

/** Id of a row in the table of rod materials. */
export type RodMaterial = keyof typeof table;

/** The properties that each row gives, in the order in which the page prints them. */
export const properties = [
  'density',
  'youngsModulus',
  'expansion',
  'yieldStrength',
  'tensileStrength',
  'fatigueStrength',
  'fatigueLife',
] as const;
export type Property = (typeof properties)[number];

/** How well a value is known: read, quoted, from memory, or worked out by the rule for steels. */
export type Known = 'read' | 'quoted' | 'memory' | 'rule';

/** One row: g/cm³, GPa, 1e-6/K, MPa, MPa, MPa, reversals; `temperature` in °C. */
export interface MaterialRow extends Readonly<Record<Property, number>> {
  readonly label: string;
  readonly family: string;
  /** Typical, minimum, or the highest of a study. */
  readonly kind: string;
  readonly temperature: number;
  /** How the fatigue strength was measured, or for which load a rule gives it. */
  readonly fatigueTest: string;
  readonly source: string;
  readonly evidence: Readonly<Record<Property, string>>;
  /** Where a value's source is not the row's. `memory` where there is none to cite. */
  readonly sources: Readonly<Partial<Record<Property, string>>>;
  readonly note?: string;
  /** Share of the yield strength left after 10 000 h at a temperature [°C], measured there. */
  readonly hotYield?: {
    readonly source: string;
    readonly evidence: string;
    readonly points: readonly (readonly number[])[];
  };
}

const rows: Readonly<Record<RodMaterial, MaterialRow>> = table;

/** The ids in the order of the table. */
export const rodMaterials = Object.keys(table) as readonly RodMaterial[];

/** The row of a material. */
export function materialOf(id: RodMaterial): MaterialRow {
  return rows[id];
}

/** What a polished bar bears in straight pull and push, over what it bears bent while turning. */
const axialShare = 0.85;

/**
 * The same in SI. The fatigue strength is that for pull and push along the rod: {@link axialShare} of one that was
 * measured in rotating bending, so that no metal is set against another by a milder test.
 */
export function metalOf(id: RodMaterial): RodMetal & { readonly fatigueLife: number } {
  const row = rows[id];
  return {
    density: toSI(row.density, 'g/cm3'),
    youngsModulus: toSI(row.youngsModulus, 'GPa'),
    expansion: toSI(row.expansion, 'ppm/K'),
    yieldStrength: toSI(row.yieldStrength, 'MPa'),
    fatigueStrength:
      toSI(row.fatigueStrength, 'MPa') * (row.fatigueTest === 'rotating bending' ? axialShare : 1),
    fatigueLife: row.fatigueLife,
  };
}

/**
 * Share of the yield strength that is left at a temperature [K], on straight lines between the table's points.
 * Undefined where the table says nothing: other materials, and temperatures beyond its last point.
 */
export function hotYieldShare(id: RodMaterial, temperature: number): number | undefined {
  const points = rows[id].hotYield?.points ?? [];
  const warm = temperature - 273.15;
  const first = points[0];
  if (first === undefined) return undefined;
  if (warm <= (first[0] ?? Infinity)) return first[1];
  for (const [i, point] of points.entries()) {
    const before = points[i - 1];
    const [t1 = 0, share1 = 0] = point;
    if (before === undefined || warm > t1) continue;
    const [t0 = 0, share0 = 0] = before;
    return share0 + ((share1 - share0) * (warm - t0)) / (t1 - t0);
  }
  return undefined;
}

/** The choice of a material for the rod. */
export const rodMaterial: ChoiceEntry<RodMaterial> = {
  type: 'choice',
  name: 'rodMaterial',
  label: 'Material of the rod',
  symbol: 'M',
  options: Object.fromEntries(rodMaterials.map((id) => [id, rows[id].label])) as Record<
    RodMaterial,
    string
  >,
  demo: { baseline: 'c70s6', candidate: '7075-t6' },
};
