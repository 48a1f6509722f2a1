import { fromSI } from '../../units/units.ts';
import { formatNumber, withUnit } from '../../units/format.ts';

/**
 * The two halves of a bobweight to a tenth of a gram, the scale's last digit: they add up to the bobweight as it is
 * printed, so that one may be a tenth heavier.
 *
 * @param si the bobweight [kg]
 */
export function halvesOf(si: number): string {
  const tenths = Math.round(fromSI(si, 'g') * 10);
  const [more, less] = [Math.ceil(tenths / 2), Math.floor(tenths / 2)].map((half) =>
    formatNumber(half / 10, { decimals: 1 }),
  );
  return withUnit(more === less ? `2 × ${more ?? ''}` : `${more ?? ''} + ${less ?? ''}`, 'g');
}
