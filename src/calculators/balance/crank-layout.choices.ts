import layouts from '../../../content/tables/crank-layouts.json' with { type: 'json' };
import type { Throw } from '../../core/balance/crank-throws.ts';
import { choiceProblem, choiceWords } from '../choice.ts';
import type { ChoiceEntry } from '../define.ts';
import { isOwnLayout, ownLayout, ownLayoutWords, readOwnLayout } from './own-layout.ts';

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

/** The choice of a crank layout: a ready one, or one that the reader writes. */
export const crankLayout = {
  type: 'choice',
  name: 'crankLayout',
  label: 'Crank layout',
  symbol: 'K',
  options,
  written: {
    label: 'own layout',
    isOne: isOwnLayout,
    problemOf: (text) => {
      const read = readOwnLayout(text);
      return 'problem' in read ? read.problem : undefined;
    },
    say: ownLayoutWords,
    startFrom: ownLayoutFrom,
  },
  demo: { baseline: 'v8-cross', candidate: 'v8-cross' },
} as const satisfies ChoiceEntry<CrankLayout>;

/** What the choice of a layout can be: the id of a row in the table, or one that a reader wrote. */
export type Layout = string;

/** A ready layout written throw by throw, to be changed; a written one as it is, and the example for anything else. */
export function ownLayoutFrom(layout: Layout): string {
  if (isOwnLayout(layout)) return layout;
  const { throws } = rows[isCrankLayout(layout) ? layout : crankLayout.demo.baseline];
  return ownLayout(
    throws.map(({ angle, position, banks }) => ({
      angle: String(angle),
      place: String(position),
      banks: banks.join(' '),
    })),
  );
}

/**
 * The throws of a layout, angles in rad from the first throw (from the middle of the first pair where pins
 * are split) or as the reader counted them, positions in pin spacings from the crank's middle.
 *
 * @throws RangeError for what is neither the id of a row nor a written layout that can be worked
 */
export function throwsOf(layout: Layout): readonly Throw[] {
  if (!isCrankLayout(layout)) {
    const read = readOwnLayout(layout);
    if ('throws' in read && isOwnLayout(layout)) return read.throws;
    throw new RangeError(`“${layout}” is no layout of a crank.`);
  }
  const radians = Math.PI / 180;
  return rows[layout].throws.map(({ angle, position, banks }) => ({
    angle: angle * radians,
    position,
    banks: banks.map((bank) => bank * radians),
  }));
}

/** The balance factors that the trade uses for a layout beside one half; undefined where none is known. */
export function tradeFactorOf(layout: Layout): string | undefined {
  return isCrankLayout(layout) ? rows[layout].tradeFactor : undefined;
}

/** True for the id of a row in the table. */
export function isCrankLayout(id: string): id is CrankLayout {
  return Object.hasOwn(rows, id);
}

/** True for a layout that {@link throwsOf} knows. */
export function isLayout(text: string): boolean {
  return choiceProblem(crankLayout, text) === undefined;
}

/** What a layout is called. */
export function layoutLabel(layout: Layout): string {
  return choiceWords(crankLayout, layout) ?? '';
}
