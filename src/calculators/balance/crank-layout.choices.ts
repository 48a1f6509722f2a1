import layouts from '../../../content/tables/crank-layouts.json' with { type: 'json' };
import type { Throw } from '../../core/balance/crank-throws.ts';
import type { ChoiceEntry } from '../define.ts';

/** Id of a row in the table of crank layouts. */
export type CrankLayout = keyof typeof layouts;

interface Row {
  readonly label: string;
  readonly source: string;
  /** A balance factor other than one half that is usual for it; common practice, no source. */
  readonly tradeFactor?: string;
  readonly throws: readonly {
    /** [degrees] */
    readonly angle: number;
    readonly position: number;
    /** [degrees] */
    readonly banks: readonly number[];
  }[];
}
const rows: Readonly<Record<CrankLayout, Row>> = layouts;

/** The ids in the order of the table. */
export const crankLayouts = Object.keys(layouts) as readonly CrankLayout[];

const options = Object.fromEntries(crankLayouts.map((id) => [id, rows[id].label])) as Record<
  CrankLayout,
  string
>;

/** The choice of a ready crank layout. */
export const crankLayout = {
  type: 'choice',
  name: 'crankLayout',
  label: 'Crank layout',
  symbol: 'K',
  options,
  demo: { baseline: 'v8-cross', candidate: 'v8-cross' },
} as const satisfies ChoiceEntry<CrankLayout>;

/**
 * The throws of a layout, angles in rad from the first throw (from the middle of the first pair where pins
 * are split), positions in pin spacings from the crank's middle.
 */
export function throwsOf(id: CrankLayout): readonly Throw[] {
  const radians = Math.PI / 180;
  return rows[id].throws.map(({ angle, position, banks }) => ({
    angle: angle * radians,
    position,
    banks: banks.map((bank) => bank * radians),
  }));
}

/** The balance factors that the trade uses for a layout beside one half; undefined where none is known. */
export function tradeFactorOf(id: CrankLayout): string | undefined {
  return rows[id].tradeFactor;
}

/** True for the id of a row in the table. */
export function isCrankLayout(id: string): id is CrankLayout {
  return Object.hasOwn(rows, id);
}
