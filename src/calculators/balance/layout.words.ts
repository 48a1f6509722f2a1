import { crankPins, factorBy, primaryLeft, leastFactor } from '../../core/balance/crank-pins.ts';
import { formatNumber } from '../../units/format.ts';
import { throwsOf, tradeFactorOf, type CrankLayout } from './crank-layout.choices.ts';

/** What a layout settles, in sentences; one text for the sheet, the card and the job. */

/** Said of a crank on which equal bobweights cancel. */
export const noBobweights =
  'No bobweights needed: with the same mass on every pin the throws cancel, as a force and as a couple, so that the balancing machine reads the same with equal bobweights or with none.';

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six'] as const;

/** A number of things in words up to six: `three pins`. */
function counted(count: number, one: string): string {
  return `${small[count] ?? String(count)} ${one}${count === 1 ? '' : 's'}`;
}

/** What hangs on the crank: `Four pins with two rods each`. */
export function hangsWords(id: CrankLayout): string {
  const { pins, places, rodsPerPin } = crankPins(throwsOf(id));
  const rods = counted(rodsPerPin, 'rod');
  const words =
    places > pins
      ? `${counted(pins, 'split pin')}, ${rods} on each half`
      : `${counted(pins, 'pin')} with ${rods}${pins === 1 ? '' : ' each'}`;
  return words.replace(/^./, (letter) => letter.toUpperCase());
}

/** How many bobweights the balancing machine needs, or why none. */
export function bobweightsWords(id: CrankLayout): string {
  const { pins, places, bobweights } = crankPins(throwsOf(id));
  if (bobweights === 0) return noBobweights;
  const each = places > pins ? ', each clamped at the angle of its half pin' : '';
  return `${counted(bobweights, 'bobweight').replace(/^./, (letter) => letter.toUpperCase())} to make${each}.`;
}

/** A multiple of F₁, or of F₁ times the pin spacing, to three figures; empty for none. */
function times(value: number, of: string): string {
  if (value === 0) return '';
  const number = formatNumber(value, { significant: 3 });
  return number === '1' || number === '1.00' ? of : `${number} ${of}`;
}

/** Which balance factor a layout takes, and why. */
export function factorWords(id: CrankLayout): string {
  const throws = throwsOf(id);
  const by = factorBy(throws);
  if (by === 'none')
    return 'Balance factor: none to choose, since the reciprocating forces of the pins cancel one another.';
  if (by === 'result')
    return 'Balance factor: 50 %, a result. Half of the reciprocating force rotates with the crank, and on this layout the halves that rotate backward cancel, so that counterweights can take all of it.';
  const left = primaryLeft(throws, { reciprocatingFraction: leastFactor });
  const rest = [
    times(left.force, 'F₁ as a force'),
    times(left.couple, 'F₁ times the pin spacing as a couple'),
  ]
    .filter((words) => words !== '')
    .join(' and ');
  const trade = tradeFactorOf(id);
  const used = trade === undefined ? '' : ` In use: ${trade} (common practice, no source).`;
  return `Balance factor: 50 %, a choice. It leaves the least, ${rest}, which rotates backward out of reach of any counterweight; another factor makes the shaking smaller in one direction and larger in the other.${used}`;
}
