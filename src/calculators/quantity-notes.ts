import type * as quantities from './quantities.ts';
import { bearing } from './quantity-notes/bearing.ts';
import { burning } from './quantity-notes/burning.ts';
import { crank } from './quantity-notes/crank.ts';
import { cylinder } from './quantity-notes/cylinder.ts';
import { inertia } from './quantity-notes/inertia.ts';
import { masses } from './quantity-notes/masses.ts';
import { orifice } from './quantity-notes/orifice.ts';
import { pin } from './quantity-notes/pin.ts';
import { readings } from './quantity-notes/readings.ts';
import { ringGas } from './quantity-notes/ring-gas.ts';
import { rings } from './quantity-notes/rings.ts';
import { rod } from './quantity-notes/rod.ts';
import { speed } from './quantity-notes/speed.ts';
import { weighing } from './quantity-notes/weighing.ts';
import type { NotesOf } from './quantity-notes/note.ts';

export type { QuantityNote } from './quantity-notes/note.ts';

/**
 * One note for every quantity of the dictionary; the compiler names the one that is missing. The ways of
 * measuring are those of the trade: common practice, no source.
 */
export const quantityNotes: NotesOf<typeof quantities> = {
  ...bearing,
  ...burning,
  ...crank,
  ...cylinder,
  ...inertia,
  ...masses,
  ...orifice,
  ...pin,
  ...readings,
  ...ringGas,
  ...rings,
  ...rod,
  ...speed,
  ...weighing,
};
