import { convertTyped, formatNumber } from './format.ts';
import { clean, takeNumber } from './number.ts';
import type { ReadContext } from './reading.ts';
import { fromSI, unitOf } from './units.ts';

/** What an example needs to know of the field. */
export type Exemplified = Pick<ReadContext, 'kind' | 'unit' | 'usual' | 'hard' | 'own' | 'samples'>;

/**
 * The end of a refusal: "Write it like 73.0 or 73,0 mm." The field's own example in the unit of the field, else
 * a number from the middle of its usual range; two readings for a list. A comma is shown only where it cannot
 * be taken for thousands.
 */
export function exampleSentence(about: Exemplified): string {
  const { symbol } = unitOf(about.unit);
  const samples = (about.samples ?? []).map((text) => inUnit(text, about));
  const [first, second] = samples.filter((text) => text !== undefined);
  const number = first ?? middle(about);
  const comma = number.replace('.', ',');
  const both =
    second !== undefined
      ? `${number}; ${second}`
      : comma === number || /^−?[1-9]\d{0,2},\d{3}$/.test(comma)
        ? number
        : `${number} or ${comma}`;
  return `Write it like ${both}${symbol === '' || symbol === '°' ? symbol : ` ${symbol}`}.`;
}

/** The digits of an example in the unit of the field; nothing for 0, which shows no digits. */
function inUnit(sample: string, { kind, own, unit }: Exemplified): string | undefined {
  const number = takeNumber(clean(sample));
  if (unitOf(unit).kind !== kind) return undefined;
  if (typeof number === 'string' || number.value === 0) return undefined;
  return convertTyped(sample, own?.[0] ?? unit, unit);
}

function middle({ kind, unit, usual, hard }: Exemplified): string {
  if (kind === 'count') return '4';
  const [low, high] = (usual ?? hard ?? []).map((limit) => fromSI(limit, unit));
  if (low === undefined || high === undefined) return '12.5';
  const between = low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
  return formatNumber(Number(between.toPrecision(2)));
}
