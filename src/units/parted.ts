import type { Field, TypedValue } from './field.ts';
import { clean, takeNumber } from './number.ts';
import { findUnit } from './units.ts';

/** `±`, `+/-`, `+-`, with any dash. */
const sign = /±|\+ ?\/? ?[-‐-―−]/;

/**
 * A value whose ± stands behind its number, as in `73.0 ± 0.05`, with the ± in its own place. A unit behind both
 * serves both. A ± that is still being written takes the former one away, since its place is now in the text;
 * the text then stays as it is, which reads as no number. Any other value is returned as it is.
 */
export function parted<V extends Partial<TypedValue> & Pick<TypedValue, 'text'>>(
  value: V,
  field: Field,
): V {
  if (field.type !== 'number' || field.kind === 'count' || !sign.test(value.text)) return value;
  const [, inside = value.text, behind = ''] = /^\s*\((.*)\)(.*)$/.exec(value.text) ?? [];
  const [left = '', right = '', ...more] = inside.split(sign);
  const number = takeNumber(clean(left));
  const spread = takeNumber(clean(right));
  if (more.length > 0 || typeof number === 'string' || typeof spread === 'string')
    return { ...value, plusMinus: '' };
  const unit = `${spread.rest}${behind}`.trim();
  const known = unit === '' || findUnit(unit, field.kind)?.kind === field.kind || unit === '%';
  if (!known || spread.value < 0) return { ...value, plusMinus: '' };
  const share = unit === '%' && field.kind !== 'ratio';
  const both = number.rest === '' && unit !== '' && !share;
  // A share of a plain number would be a share of a share: in 50 ± 1 % both are the same per cent.
  const own = field.kind === 'ratio' ? '' : behind.trim();
  const width = field.kind === 'ratio' ? right.replace(/%\s*$/, '') : right;
  return {
    ...value,
    text: both ? `${left.trim()} ${unit}` : left.trim(),
    plusMinus: `${width.trim()} ${own}`.trim(),
  };
}
