import type { PullFactors } from '../../../core/loads/reversal-load.ts';

/** A section that the reader can choose. */
export type CutId = Exclude<keyof PullFactors, 'reciprocating'>;

/** The field of the sketch [drawing units]; y downward, the piston on top, for form and not to scale. */
export const room = { width: 153, height: 306 } as const;

/** From the piston down: what is cut off at one place hangs on it, with all that is cut off above. */
const order: readonly CutId[] = ['boss', 'eye', 'shank', 'parting', 'crankpin'];

/** A part of the sketch, and the first section from above that it hangs on; none for what turns. */
export interface RodPart {
  readonly d: string;
  readonly from: CutId | undefined;
  /** The mass that it stands for, as the calculator names it; none for what turns. */
  readonly quantity: string | undefined;
}

const circle = (x: number, y: number, r: number): string =>
  `M${String(x - r)} ${String(y)}a${String(r)} ${String(r)} 0 1 0 ${String(2 * r)} 0a${String(r)} ${String(r)} 0 1 0 ${String(-2 * r)} 0z`;

export const parts: readonly RodPart[] = [
  // Crown, ring belt and skirts, open below.
  {
    d: 'M16 8H104V84H92V60Q92 34 60 34Q28 34 28 60V84H16Z',
    from: 'boss',
    quantity: 'pistonMass',
  },
  // Above the cut through the beam, and from there to the joint.
  {
    d: 'M47 68L45 150H75L73 68A19 19 0 1 0 47 68Z',
    from: 'shank',
    quantity: 'smallEndMass rodMassAbove',
  },
  {
    d: 'M45 150L42 198Q22 208 22 236H98Q98 208 78 198L75 150Z',
    from: 'parting',
    quantity: 'bigEndMass',
  },
  // The cap.
  {
    d: 'M22 236V246Q22 276 60 276Q98 276 98 246V236Z',
    from: 'crankpin',
    quantity: 'capMass',
  },
  { d: circle(60, 54, 10), from: 'eye', quantity: 'pinMass' },
  // The crankpin itself turns.
  { d: circle(60, 236, 26), from: undefined, quantity: undefined },
];

/** Where each is cut, and where its leader begins. */
export const cuts: Readonly<
  Record<CutId, { readonly d: string; readonly end: readonly [number, number] }>
> = {
  boss: { d: 'M12 40H108', end: [108, 40] },
  eye: { d: 'M36 54H50M70 54H84', end: [84, 54] },
  shank: { d: 'M38 150H82', end: [82, 150] },
  parting: { d: 'M14 236H34M86 236H106', end: [106, 236] },
  crankpin: { d: 'M34 240A26 26 0 0 0 86 240', end: [80, 253] },
};

/** Whether a part pulls at the chosen section. */
export function hangs({ from }: RodPart, chosen: CutId): boolean {
  return from !== undefined && order.indexOf(from) <= order.indexOf(chosen);
}
