import { placesOf, type Throw } from '../balance/crank-throws.ts';
import { at } from '../math/at.ts';
import { refusal } from '../refuse.ts';

/** One turn, and the cycle of a four-stroke engine [rad]. */
const turn = 2 * Math.PI;
const cycle = 2 * turn;
/** Angles closer than this are one and the same, worked out in two ways. */
const same = 1e-9;

/** How the cylinders are counted, from the nose: throw by throw, or along one bank and then along the next. */
export type Numbering = 'throws' | 'banks';

/** One cylinder: which place along the crank it pulls at, and its top dead centre [rad] of the crank, 0 to 2π. */
interface Numbered {
  readonly place: number;
  readonly deadCentre: number;
}

/** A cylinder with the moment it fires [rad of the crank], from 0 at the first of the order to 4π. */
export interface Firing {
  /** Along the crank, counted from 0 at the nose. */
  readonly place: number;
  readonly angle: number;
}

/**
 * The cylinders by their number. `hand` −1 is the mirror image of the crank, `side` −1 counts the banks the other way
 * round: neither is settled by the name of a layout.
 */
function numbered(
  throws: readonly Throw[],
  numbering: Numbering,
  hand: 1 | -1,
  side: 1 | -1,
): readonly Numbered[] {
  const places = placesOf(throws);
  const rods = throws.flatMap(({ angle, position, banks }) =>
    banks.map((bank) => ({
      place: places.indexOf(position),
      rank: side * bank,
      deadCentre: hand * (bank - angle),
    })),
  );
  return rods
    .sort((one, other) =>
      numbering === 'throws'
        ? one.place - other.place || one.rank - other.rank
        : one.rank - other.rank || one.place - other.place,
    )
    .map(({ place, deadCentre }) => ({
      place,
      deadCentre: deadCentre - turn * Math.floor(deadCentre / turn + same),
    }));
}

/** Angles at which all fire, and the sum of their squared intervals: the less, the evener. */
interface Sequence {
  readonly angles: readonly number[];
  readonly unevenness: number;
}

/**
 * The angles at which cylinders fire one after the other, each at a dead centre of its own, all within one cycle; of
 * several such ways the evenest, and of those the earliest. Undefined where there is none.
 */
function evenest(deadCentres: readonly number[]): Sequence | undefined {
  const first = at(deadCentres, 0);
  let best: Sequence | undefined;
  function go(angles: readonly number[], sum: number): void {
    const last = at(angles, angles.length - 1);
    if (angles.length === deadCentres.length) {
      const unevenness = sum + (first + cycle - last) ** 2;
      if (isEvener(unevenness, best)) best = { angles, unevenness };
      return;
    }
    const own = at(deadCentres, angles.length);
    for (let angle = own; angle < first + cycle - same; angle += turn)
      if (angle > last + same) go([...angles, angle], sum + (angle - last) ** 2);
  }
  go([first], 0);
  return best;
}

function isEvener(unevenness: number, than: Sequence | undefined): boolean {
  return than === undefined || unevenness < than.unevenness * (1 - same);
}

/** Turns of the crank until all have fired and the first is due again, each as soon as it can after the one before. */
function turnsTaken(deadCentres: readonly number[]): number {
  const first = at(deadCentres, 0);
  let last = first;
  for (const own of [...deadCentres.slice(1), first])
    last = own + turn * (Math.floor((last + same - own) / turn) + 1);
  return Math.round((last - first) / turn);
}

/**
 * When each cylinder of a four-stroke engine fires, in the order given: every one at its own dead centre, in one of the
 * two turns of the cycle. An order alone does not always settle the turn (a V-twin); then the evenest firing is taken.
 *
 * The order may fit the crank or its mirror image, with either bank counted first: of those the evenest firing too.
 * @throws OutOfDomain where the order does not name every cylinder once, and where it takes more than the two turns of
 * a cycle on this crank
 */
export function firingsOf(
  throws: readonly Throw[],
  { firingOrder }: { readonly firingOrder: readonly number[] },
  numbering: Numbering = 'throws',
): readonly Firing[] {
  checkOrder(firingOrder, throws.flatMap(({ banks }) => banks).length);
  let fewest = Infinity;
  let best: { readonly places: readonly number[]; readonly sequence: Sequence } | undefined;
  for (const hand of [1, -1] as const)
    for (const side of [1, -1] as const) {
      const all = numbered(throws, numbering, hand, side);
      const inOrder = firingOrder.map((number) => at(all, number - 1));
      const deadCentres = inOrder.map(({ deadCentre }) => deadCentre);
      const sequence = evenest(deadCentres);
      if (sequence === undefined) fewest = Math.min(fewest, turnsTaken(deadCentres));
      else if (isEvener(sequence.unevenness, best?.sequence))
        best = { places: inOrder.map(({ place }) => place), sequence };
    }
  if (best === undefined)
    throw refusal({ firingOrder: fewest }, 'firingOrder', 'at most', 2, twoTurns);
  const { places, sequence } = best;
  const [first = 0] = sequence.angles;
  return places.map((place, i) => ({ place, angle: at(sequence.angles, i) - first }));
}

const twoTurns = 'the two turns of a cycle: fired in this order, this crank takes more';

function checkOrder(order: readonly number[], cylinders: number): void {
  const all = `${cylinders} cylinders, each once`;
  const count = { firingOrder: order.length };
  if (order.length < cylinders) throw refusal(count, 'firingOrder', 'at least', cylinders, all);
  if (order.length > cylinders) throw refusal(count, 'firingOrder', 'at most', cylinders, all);
  for (const number of order) {
    const one = { firingOrder: number };
    if (!Number.isInteger(number) || number < 1) throw refusal(one, 'firingOrder', 'at least', 1);
    if (number > cylinders) throw refusal(one, 'firingOrder', 'at most', cylinders);
  }
  const named = { firingOrder: new Set(order).size };
  if (named.firingOrder < cylinders)
    throw refusal(named, 'firingOrder', 'at least', cylinders, all);
}

/**
 * When each cylinder fires where no order is told: at its own dead centre, every other one a turn later than the one
 * before, counted from whichever makes it evenest. On a crank whose dead centres are evenly spread it is even.
 */
export function alternateFirings(throws: readonly Throw[]): readonly Firing[] {
  const all = [...numbered(throws, 'throws', 1, 1)].sort(
    (one, other) => one.deadCentre - other.deadCentre,
  );
  let best: readonly Firing[] = [];
  let least = Infinity;
  for (const [from, { deadCentre: first }] of all.entries()) {
    const inTurn = [...all.slice(from), ...all.slice(0, from)].map(({ place, deadCentre }, i) => ({
      place,
      angle: deadCentre - first + (deadCentre < first ? turn : 0) + (i % 2) * turn,
    }));
    const firings = inTurn.sort((one, other) => one.angle - other.angle);
    const unevenness = firings.reduce((sum, { angle }, i) => {
      const next = firings[i + 1]?.angle ?? cycle;
      return sum + (next - angle) ** 2;
    }, 0);
    if (unevenness < least * (1 - same)) [best, least] = [firings, unevenness];
  }
  return best;
}
