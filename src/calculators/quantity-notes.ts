import { notes as drilling } from './balance/drilling.notes.ts';
import { notes as balance } from './balance/notes.ts';
import { notes as planes } from './balance/planes.notes.ts';
import { notes as bearings } from './bearings/notes.ts';
import { notes as inertia } from './inertia/notes.ts';
import { notes as loads } from './loads/notes.ts';
import { notes as motion } from './motion/notes.ts';
import { notes as pins } from './pins/notes.ts';
import type * as quantities from './quantities.ts';
import { notes as rings } from './rings/notes.ts';
import { notes as rods } from './rods/notes.ts';
import { notes as stack } from './stack/notes.ts';
import { notes as torsion } from './torsion/notes.ts';

/** How a quantity is measured at the bench, and what is easily got wrong. Read by the build only. */
export interface QuantityNote {
  readonly measure: string;
  readonly note?: string;
}

/** One note for every quantity of a subject; the compiler names the one that is missing. */
export type NotesOf<Quantities> = Readonly<Record<keyof Quantities, QuantityNote>>;

/**
 * One note for every quantity of the dictionary; the compiler names the one that is missing. The ways of
 * measuring are those of the trade: common practice, no source.
 */
export const quantityNotes: NotesOf<typeof quantities> = {
  ...balance,
  ...drilling,
  ...planes,
  ...bearings,
  ...inertia,
  ...loads,
  ...motion,
  ...pins,
  ...rings,
  ...rods,
  ...stack,
  ...torsion,
};
