import type { LineId } from './lines.ts';

/** A number of both sets in words, as the table has it. */
export interface Fact {
  readonly before: string;
  readonly after: string;
  /** The sign of after less before. */
  readonly step: -1 | 0 | 1;
}

/** What is known of both sets. A line that lacks a number of either is left out. */
export type Facts = Readonly<Partial<Record<LineId, Fact>>> & {
  /** The clearance running, and at the coldest start, of the set that goes in. */
  readonly clearanceHot?: string;
  readonly clearanceCold?: string;
  /** The family of metals of the rods that go in, where it was chosen. */
  readonly metal?: string;
};

/** What a sentence is about, in the words of the box that chooses it. */
export const kinds = {
  pull: 'Lighter or heavier parts, and the pull on the bolts',
  balance: 'Why the crank is balanced again',
  power: 'Whether it makes more power',
  inertia: 'Whether it gains speed more readily',
  speed: 'The highest speed',
  rings: 'The rings',
  clearance: 'The oil clearance',
  metal: 'Why aluminium rods are counted by their runs',
} as const;
export type Kind = keyof typeof kinds;
export const kindIds = Object.keys(kinds) as readonly Kind[];

/** A customer reads two or three. */
export const mostKinds = 3;

/** `changes from 757 g to 558 g`, or `stays at 757 g`. */
function change({ before, after, step }: Fact): string {
  return step === 0 || before === after
    ? `stays at ${after}`
    : `changes from ${before} to ${after}`;
}

const ofKind: Readonly<Record<Kind, (facts: Facts) => string | undefined>> = {
  pull({ reciprocating, pull, speed }) {
    if (reciprocating === undefined || pull === undefined || speed === undefined) return undefined;
    const mass = `What goes up and down in each cylinder ${change(reciprocating)}.`;
    const at =
      speed.step === 0
        ? `At the highest speed, ${speed.after}, the pull on the bolts of one rod ${change(pull)}.`
        : pull.step === 0
          ? `The pull on the bolts of one rod is ${pull.after} at ${speed.before} before and at ${speed.after} now.`
          : `The pull on the bolts of one rod changes from ${pull.before} at ${speed.before} to ${pull.after} at ${speed.after}.`;
    return `${mass} ${at}`;
  },
  balance({ bobweight }) {
    if (bobweight === undefined) return undefined;
    const what = `The bobweight, which stands for rods and pistons while a crank is balanced, ${change(bobweight)}`;
    return bobweight.step === 0
      ? `${what}.`
      : `${what}: the crank has to be balanced for the parts that go in.`;
  },
  power({ reciprocating }) {
    if (reciprocating === undefined || reciprocating.step === 0) return undefined;
    return reciprocating.step < 0
      ? 'Lighter parts make no power at a steady speed; the engine only gains speed more readily.'
      : 'Heavier parts cost no power at a steady speed; the engine only gains speed less readily.';
  },
  inertia({ inertia }) {
    if (inertia === undefined) return undefined;
    const what = `In the gear worked out, what turns in the engine counts as mass of the car, and that ${change(inertia)}`;
    if (inertia.step === 0) return `${what}.`;
    return `${what}: the car gains speed ${inertia.step < 0 ? 'more' : 'less'} readily.`;
  },
  speed({ speed, pistonSpeed }) {
    if (speed === undefined) return undefined;
    const piston =
      pistonSpeed === undefined ? '' : ` The mean piston speed at it ${change(pistonSpeed)}.`;
    return `The highest speed ${change(speed)}.${piston}`;
  },
  rings({ ring }) {
    if (ring === undefined) return undefined;
    return `The pressure of the top ring on the wall by its own spring ${change(ring)}; while the engine fires, the gas behind the ring presses far harder.`;
  },
  clearance({ clearance, clearanceHot, clearanceCold }) {
    if (clearance === undefined) return undefined;
    const later =
      clearanceHot === undefined || clearanceCold === undefined
        ? ''
        : ` With the parts that go in it is ${clearanceHot} running and ${clearanceCold} at the coldest start.`;
    return `The oil clearance of the rod bearing, at the temperature of the shop, ${change(clearance)}.${later}`;
  },
  metal({ metal }) {
    return metal === 'aluminium'
      ? 'An aluminium rod has no load that it carries for ever: its runs are counted, and it is replaced after the number agreed.'
      : undefined;
  },
};

/** The sentence of a kind; undefined where the numbers that it speaks of are not there. */
export function sentenceOf(kind: Kind, facts: Facts): string | undefined {
  return ofKind[kind](facts);
}

/** The kinds that something can be said of, in order. */
export function kindsOf(facts: Facts): readonly Kind[] {
  return kindIds.filter((kind) => sentenceOf(kind, facts) !== undefined);
}

/** Which sentences a link asks for; undefined where it leaves the choice. */
export function readKinds(text: string | undefined): readonly Kind[] | undefined {
  const words = (text ?? '').split('.').filter((word) => word !== '');
  if (words.length === 0 || words.includes('any')) return undefined;
  return kindIds.filter((kind) => words.includes(kind)).slice(0, mostKinds);
}
