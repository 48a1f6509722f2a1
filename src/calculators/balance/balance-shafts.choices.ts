import type { ShaftsFitted } from '../../core/balance/balance-shafts.ts';
import type { ChoiceEntry } from '../define.ts';

/** Which balance shafts an engine has. */
export type BalanceShafts = 'none' | 'one' | 'pair' | 'both';

/** The choice of balance shafts. */
export const balanceShafts = {
  type: 'choice',
  name: 'balanceShafts',
  label: 'Balance shafts',
  symbol: 'K_shaft',
  options: {
    none: 'none',
    one: 'one against the crank, at its speed',
    pair: 'a pair at twice crank speed',
    both: 'one at crank speed and a pair at twice',
  },
  demo: { baseline: 'none', candidate: 'none' },
} as const satisfies ChoiceEntry<BalanceShafts>;

/** Which shafts a choice stands for. */
export function shaftsOf(choice: BalanceShafts): ShaftsFitted {
  return {
    one: choice === 'one' || choice === 'both',
    pair: choice === 'pair' || choice === 'both',
  };
}
