import { convertDigits } from './format.ts';
import { plainToken, type TypedNumber } from './number.ts';
import type { ReadContext } from './reading.ts';
import { suggest, typedText, type Suggestion } from './say.ts';
import { fromSI, spellingKey, toSI, unitOf, unitsOfKind, type Unit } from './units.ts';

/** Whether an SI value lies in a range, ends included; `undefined` without a range. */
export function fits(
  si: number,
  range: readonly [number, number] | undefined,
): boolean | undefined {
  return range === undefined ? undefined : si >= range[0] && si <= range[1];
}

/** Something else that may have been meant: the question, and the texts that would say so. */
export interface Doubt {
  readonly question: string;
  readonly suggestions: readonly Suggestion[];
}

/** `11/4` is 2.75, but may be a 1 1/4 whose space was lost. */
export function improper(number: TypedNumber, unit: Unit): Doubt | undefined {
  if (number.form !== 'fraction' || number.whole !== '') return undefined;
  const { top, bottom, sign } = number;
  const mixed: string[] = [];
  for (let cut = 1; cut < top.length; cut++) {
    const part = top.slice(cut);
    if (!part.startsWith('0') && Number(part) < Number(bottom))
      mixed.push(`${sign === '-' ? '-' : ''}${top.slice(0, cut)} ${part}/${bottom}`);
  }
  if (Number(top) < Number(bottom) || mixed.length === 0) return undefined;
  const tail = number.rest === '' ? '' : ` ${unit.symbol}`;
  return {
    question: `If you meant ${mixed.join(' or ')}, type a space.`,
    suggestions: mixed.map((m) => suggest(m + tail)),
  };
}

/** Two abbreviations that half the trade reads otherwise. */
export function slang(number: TypedNumber, unit: Unit): Doubt | undefined {
  const key = spellingKey(number.rest);
  const other = key === 'gr' ? 'g' : /^mils?$/.test(key) && unit.id === 'thou' ? 'mm' : undefined;
  if (other === undefined) return undefined;
  const text = `${plainToken(number)} ${other}`;
  return { question: `${text}?`, suggestions: [suggest(text)] };
}

/** A bare number below one in a field of per cents: `0.55` may be the fraction that 55 % is. */
export function fraction(number: TypedNumber, unit: Unit): Doubt | undefined {
  const { value } = number;
  if (unit.id !== 'pct' || number.rest !== '' || !(Math.abs(value) > 0 && Math.abs(value) < 1))
    return undefined;
  const percents = convertDigits(value, number.step, 'ratio', 'pct');
  const text = typedText(percents.replace('\u2212', '-'), unit);
  return {
    question: `${typedText(plainToken(number), unit)}, or ${text}?`,
    suggestions: [suggest(text), suggest(typedText(plainToken(number), unit))],
  };
}

/** Outside the hard range: units in which the same number would be usual, the other system's first. */
export function slips(number: TypedNumber, unit: Unit, si: number, context: ReadContext): Doubt[] {
  if (fits(si, context.hard) !== false) return [];
  const others = unitsOfKind(context.kind).filter(
    (u) =>
      u.id !== unit.id && fits(toSI(number.value, u.id), context.usual ?? context.hard) === true,
  );
  const rank = (u: Unit): number =>
    (['mm', 'in', 'g', 'kg', 'deg', 'rpm', 'pct', 'ratio'].includes(u.id) ? 0 : 2) +
    (u.system === unit.system ? 1 : 0);
  return others
    .sort((a, b) => rank(a) - rank(b))
    .slice(0, 2)
    .map((u) => {
      const text = typedText(plainToken(number), u);
      return { question: `${text}?`, suggestions: [suggest(text)] };
    });
}

/** Units too small or too seldom written to stand without a second way of saying them. */
const saidBeside: Readonly<Record<string, string>> = {
  thou: 'in',
  tenth: 'in',
  hundredth: 'mm',
  gr: 'g',
};

/** The line under the box: each way of saying what was read, joined by " = "; nothing for plain entries. */
export function explain(number: TypedNumber, unit: Unit, context: ReadContext): string | undefined {
  const exact = number.form === 'fraction';
  const plain = plainToken(number);
  const into = (id: string): string =>
    // The largest doubles exist in one unit and not in a smaller one.
    Number.isFinite(fromSI(toSI(number.value, unit.id), id))
      ? typedText(convertDigits(number.value, exact ? 0 : number.step, unit.id, id), unitOf(id))
      : typedText(plain, unit);
  const chain = [typedText(plain, unit)];
  if (!exact && (number.separator !== '' || number.mark === ','))
    chain.unshift(typedText(number.token.replace('-', '−'), unit));
  const beside = saidBeside[unit.id];
  if (beside !== undefined) chain.push(into(beside));
  if (unit.id !== context.unit) chain.push(into(context.unit));
  else if (exact)
    chain.push(into(unit.id === 'in' ? 'mm' : ['oz', 'lb'].includes(unit.id) ? 'g' : unit.id));
  const said = [...new Set(chain)];
  return said.length > 1 ? said.join(' = ') : undefined;
}
