import {
  crankPins,
  factorBy,
  leastFactor,
  primaryLeft,
  type PrimaryLeft,
} from '../../core/balance/crank-pins.ts';
import type { Throw } from '../../core/balance/crank-throws.ts';
import { throwsOf, tradeFactorOf, type Layout } from './crank-layout.choices.ts';

/** What a layout settles, in sentences; one text for the sheet, the card and the job. */

/** Said of a crank on which equal bobweights cancel. */
export const noBobweights =
  'No bobweights needed: with the same mass on every pin the throws cancel, so that the balancing machine reads the same with equal bobweights or with none.';

/** Said of a bobweight on a crank whose pins carry different numbers of rods. */
export const unlikePins =
  'The pins carry different numbers of rods. The bobweight stated is that of the first throw, and so is the rotating mass; those of another throw are in proportion to its rods.';

const small = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
] as const;

/** A number of things in words up to nine: `three pins`. */
function counted(count: number, one: string): string {
  return `${small[count] ?? String(count)} ${one}${count === 1 ? '' : 's'}`;
}

/** What hangs on the crank: `Four pins with two rods each`. */
export function hangsWords(layout: Layout): string {
  const throws = throwsOf(layout);
  const { pins, places, rodsPerPin } = crankPins(throws);
  if (rodsPerPin === undefined) return unlikeWords(throws, pins);
  const rods = counted(rodsPerPin, 'rod');
  const words =
    places > pins
      ? `${counted(pins, 'split pin')}, ${rods} on each half`
      : `${counted(pins, 'pin')} with ${rods}${pins === 1 ? '' : ' each'}`;
  return words.replace(/^./, (letter) => letter.toUpperCase());
}

/** The same where pins carry different numbers of rods: `Three pins, with two, one and two rods`. */
function unlikeWords(throws: readonly Throw[], pins: number): string {
  const rods = throws.map(({ banks }) => small[banks.length] ?? String(banks.length));
  const places = throws.length > pins ? counted(throws.length, 'throw') : counted(pins, 'pin');
  const words = `${places}, with ${rods.slice(0, -1).join(', ')} and ${rods.at(-1) ?? ''} rods`;
  return words.replace(/^./, (letter) => letter.toUpperCase());
}

/** True unless equal bobweights cancel on this crank. */
export function needsBobweights(layout: Layout): boolean {
  return crankPins(throwsOf(layout)).bobweights > 0;
}

/** How many bobweights the balancing machine needs, or why none. */
export function bobweightsWords(layout: Layout): string {
  const { pins, places, bobweights, rodsPerPin } = crankPins(throwsOf(layout));
  if (bobweights === 0) return noBobweights;
  const each = places > pins ? ', each clamped at the angle of its half pin' : '';
  const master =
    rodsPerPin !== undefined && rodsPerPin > 2
      ? ' A master rod with its link rods is counted as so many equal rods.'
      : '';
  return `${counted(bobweights, 'bobweight').replace(/^./, (letter) => letter.toUpperCase())} to make${each}.${master}`;
}

/** What counterweights leave with one half: a force and a couple that rotate backward. */
function leftWords({ force, couple }: PrimaryLeft): string {
  const one = 'the greatest primary force of one cylinder';
  const times = (value: number): string =>
    Math.abs(value - 1) < 1e-9 ? '' : `${String(Number(value.toPrecision(3)))} × `;
  const pull = force > 0 ? `${times(force)}${one}` : '';
  if (couple === 0) return pull;
  const arm = `a couple of ${times(couple)}${force > 0 ? 'that force' : one} × the pin spacing`;
  return force > 0 ? `${pull}, and ${arm}` : arm;
}

/** Balance factors in use beside one half; empty where none is known. */
function customWords(layout: Layout): string {
  const trade = tradeFactorOf(layout);
  return trade === undefined ? '' : ` In use: ${trade} (common practice, no source).`;
}

/** Which balance factor a layout takes, in one sentence, for the card; empty where there is none to choose. */
export function factorInShort(layout: Layout): string {
  const by = factorBy(throwsOf(layout));
  if (by === 'none') return '';
  return by === 'result'
    ? 'Balance factor: 50 %, a result: counterweights can take all of the primary force and couple.'
    : `Balance factor: 50 %, a choice: it leaves the least, and that rotates backward.${customWords(layout)}`;
}

/** Which balance factor a layout takes, and why. */
export function factorWords(layout: Layout): string {
  const throws = throwsOf(layout);
  const by = factorBy(throws);
  if (by === 'none')
    return 'Balance factor: none to choose, since the reciprocating forces of the pins cancel one another.';
  if (by === 'result')
    return 'Balance factor: 50 %, a result. Half of the reciprocating force rotates with the crank, and on this layout the halves that rotate backward cancel, so that counterweights can take all of it.';
  const left = leftWords(primaryLeft(throws, { reciprocatingFraction: leastFactor }));
  return `Balance factor: 50 %, a choice. It leaves the least: ${left}, rotating backward, where no counterweight reaches it. Another factor makes the shaking smaller in one direction and larger in the other.${customWords(layout)}`;
}
