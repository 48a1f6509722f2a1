import type { Entry } from '../../calculators/define.ts';
import type { FieldState } from '../../notebook/evaluation.ts';

/**
 * True when a number of the card is the invented example. What a calculator can do without, and that is nothing,
 * weighs nothing and invents nothing.
 *
 * @param isExample whether the example stands in the field
 * @param value what the field was read as
 */
export function isInvented(entry: Entry, isExample: boolean, value: FieldState['value']): boolean {
  if (!isExample || entry.type === 'choice') return false;
  return entry.optional !== true || (value !== undefined && value !== 0);
}
