import type { SetId } from '../../calculators/define.ts';
import { thinSpace } from './mathml.ts';
import { type Expression, functions, namesIn, partsOf, ungrouped } from './parse.ts';

/** How a name shows inside a formula. */
export interface Operandum {
  /** The unit its number is followed by; `ratio` and `count` have none. */
  readonly unit: string;
  readonly isList: boolean;
  /** May be left out by the reader; the model then takes nothing for it. */
  readonly isOptional: boolean;
}

/** How one slot of a line of numbers is written into the page. */
export interface SlotSpec {
  readonly name: string;
  readonly set: SetId;
  readonly unit: string;
  /** Brackets round a negative number: it stands behind an operator. */
  readonly guarded: boolean;
  /** An absent value counts as nothing. */
  readonly zero: boolean;
}

/** Two ways to write the same line: running text, and the parts that must stand upright in a fraction. */
interface Pen {
  text(words: string): string;
  sign(sign: string): string;
  slot(slot: SlotSpec): string;
  raised(base: string, exponent: string): string;
}

function count(expression: Expression): number {
  return expression.is === 'name'
    ? 1
    : partsOf(expression).reduce((sum, part) => sum + count(part), 0);
}

/**
 * The line of numbers of a formula: ordinary text with slots, that wraps on a phone. Only short fractions and
 * roots are small formulas of their own; long ones are written on one line, with the brackets they need.
 *
 * @param expression no choice between cases: each case has a line of its own
 * @param operandum how a name shows; throws for a name that is not declared
 * @param slotHtml the slot as HTML, in the tag given
 * @param halfTurn how π is written: `180°` among angles in degrees
 */
export function numbersHtml(
  expression: Expression,
  set: SetId,
  operandum: (name: string) => Operandum,
  slotHtml: (slot: SlotSpec, tag: 'span' | 'mtext') => string,
  halfTurn = 'π',
): string {
  const inText: Pen = {
    text: (words) => words,
    sign: (sign) => ` ${sign} `,
    slot: (slot) => slotHtml(slot, 'span'),
    raised: (base, exponent) => `${base}<sup>${exponent}</sup>`,
  };
  const inMath: Pen = {
    text: (words) =>
      /^[0-9.]+$/u.test(words)
        ? `<mn>${words}</mn>`
        : /^[a-z]{2,}$/u.test(words)
          ? `<mi>${words}</mi>${thinSpace}`
          : `<mo stretchy="false">${words}</mo>`,
    sign: (sign) => `<mo lspace="0.25em" rspace="0.25em">${sign}</mo>`,
    slot: (slot) => slotHtml(slot, 'mtext'),
    raised: (base, exponent) => `<msup><mrow>${base}</mrow><mrow>${exponent}</mrow></msup>`,
  };

  function hasUnit(part: Expression): boolean {
    if (part.is !== 'name') return false;
    const { unit } = operandum(part.name);
    return unit !== 'ratio' && unit !== 'count';
  }
  function hasList(part: Expression): boolean {
    return namesIn(part).some((name) => operandum(name).isList);
  }
  function isShort(part: Expression, most: number): boolean {
    return count(part) <= most && !hasList(part);
  }

  /** `first`: nothing stands before it, so that a negative number needs no brackets. */
  function write(part: Expression, pen: Pen, first: boolean): string {
    switch (part.is) {
      case 'number':
        return pen.text(part.text === 'π' ? halfTurn : part.text);
      case 'name': {
        const { unit, isOptional } = operandum(part.name);
        return pen.slot({ name: part.name, set, unit, guarded: !first, zero: isOptional });
      }
      case 'group':
        return pen.text('(') + write(part.of, pen, true) + pen.text(')');
      case 'negate':
        return pen.text('−') + write(part.of, pen, false);
      case 'add':
        return write(part.left, pen, first) + pen.sign('+') + write(part.right, pen, false);
      case 'subtract':
        return write(part.left, pen, first) + pen.sign('−') + write(part.right, pen, false);
      case 'multiply':
        return write(part.left, pen, first) + pen.sign('×') + write(part.right, pen, false);
      case 'divide':
        return quotient(part.left, part.right, pen, first);
      case 'power':
        return power(part.left, part.right, pen);
      case 'call':
        return call(part.name, part.of, pen);
      case 'when':
        throw new Error('a line of numbers shows one case of when(…), not the choice between them');
    }
  }
  function quotient(left: Expression, right: Expression, pen: Pen, first: boolean): string {
    const [over, under] = [ungrouped(left), ungrouped(right)];
    if (pen === inMath || (isShort(over, 2) && isShort(under, 2))) {
      const fraction = `<mfrac><mrow>${write(over, inMath, true)}</mrow><mrow>${write(under, inMath, true)}</mrow></mfrac>`;
      return pen === inMath ? fraction : `<math displaystyle="true">${fraction}</math>`;
    }
    // On one line, "a / 5 rad/s" would read as a divided by 5 rad and by s.
    const divisor = hasUnit(right)
      ? pen.text('(') + write(right, pen, true) + pen.text(')')
      : write(right, pen, false);
    return write(left, pen, first) + pen.sign('/') + divisor;
  }
  function power(base: Expression, exponent: Expression, pen: Pen): string {
    const raised = write(ungrouped(exponent), pen, true);
    const isBare = base.is === 'number' || base.is === 'group';
    // The brackets hold number and unit together: (5 mm)², not 5 mm².
    const inside = isBare
      ? write(base, pen, true)
      : pen.text('(') + write(base, pen, true) + pen.text(')');
    return pen.raised(inside, raised);
  }
  function call(name: string, of: readonly Expression[], pen: Pen): string {
    const parts = of.map(ungrouped);
    const [only, mean] = parts;
    if (name === 'sqrt' && only !== undefined && (pen === inMath || isShort(only, 2))) {
      const root = `<msqrt><mrow>${write(only, inMath, true)}</mrow></msqrt>`;
      return pen === inMath ? root : `<math>${root}</math>`;
    }
    if (name === 'abs' && only !== undefined)
      return pen.text('|') + write(only, pen, true) + pen.text('|');
    const word = pen.text(functions[name]?.text ?? name);
    if (name === 'exp' && only !== undefined)
      return pen.raised(pen.text('e'), write(only, pen, true));
    if (name === 'squares' && only !== undefined && mean !== undefined) {
      const each = pen.text('(') + write(only, pen, true) + pen.text(')');
      const difference = each + pen.sign('−') + write(mean, pen, false);
      return word + pen.raised(pen.text('(') + difference + pen.text(')'), '2');
    }
    const inside = parts.map((part) => write(part, pen, true)).join(pen.text('; '));
    return word + pen.text('(') + inside + pen.text(')');
  }
  return write(expression, inText, true);
}
