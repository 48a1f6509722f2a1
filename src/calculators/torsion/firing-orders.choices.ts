import orders from '../../../content/tables/firing-orders.json' with { type: 'json' };
import type { Numbering } from '../../core/torsion/firing.ts';
import { isCrankLayout, type CrankLayout, type Layout } from '../balance/crank-layout.choices.ts';
import type { ChoiceEntry } from '../define.ts';

const usual: Readonly<Record<CrankLayout, readonly number[]>> = orders;

/** A firing order that is usual for a ready layout, its cylinders counted throw by throw; none for a written one. */
export function usualOrder(layout: Layout): readonly number[] | undefined {
  return isCrankLayout(layout) ? usual[layout] : undefined;
}

/** How the cylinders of an order that the reader gives are counted. */
export const cylinderNumbering = {
  type: 'choice',
  name: 'cylinderNumbering',
  label: 'How cylinders are counted from the nose',
  symbol: 'K_no',
  options: {
    throws: 'throw by throw: 1 and 2 on the first',
    banks: 'along one bank, then along the other',
  },
  demo: { baseline: 'throws', candidate: 'throws' },
} as const satisfies ChoiceEntry<Numbering>;
