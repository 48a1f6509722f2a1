import type { Validity } from '../define.ts';

/** The strip of λ, the throw over the rod length: from no throw to a rod as long as the throw. */
export const throwRatio: Validity<
  { readonly stroke: number; readonly rodLength: number },
  unknown
> = {
  id: 'throw-ratio',
  label: 'Throw over rod length',
  symbol: 'λ',
  kind: 'ratio',
  of: ({ stroke, rodLength }) => stroke / 2 / rodLength,
  possible: [0, 1],
};
