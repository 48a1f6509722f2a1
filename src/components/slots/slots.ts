import type { AnyCalculator, Result, SetId, Value } from '../../calculators/define.ts';
import type { PropagatedOutputs } from '../../calculators/uncertainty.ts';
import type { System } from '../../units/kinds.ts';
import { noNumber, slotContent, type SlotMarks, type SlotValues } from './content.ts';
import type { valueOnTheWay } from './on-the-way.ts';
import { type Block, watchScreen } from '../waking/on-screen.ts';
import { Strips, type StripSet } from '../evidence/strips.ts';

/** What the slots of one set hold. */
export interface SlotSet {
  readonly values: SlotValues;
  /** Of a last good result, what it was for: `for 398.6 g`. Absent where the result is of the numbers in the fields. */
  readonly stale?: string | undefined;
  /** The ± of the set's results, as far as it is worked out: it sets their figures, as in the table. */
  readonly plusMinus?: PropagatedOutputs | undefined;
}
/** Those of both sets, and of what compares them. */
export type SlotSets = Readonly<Record<SetId | 'both', SlotSet>>;

function isInput(value: Value | Result): value is Value {
  return typeof value !== 'object' || Array.isArray(value);
}

function isResult(value: Value | Result): value is Result {
  return typeof value === 'number' || (typeof value === 'object' && !Array.isArray(value));
}

/** A set's values parted into what was given and what was computed. */
function parted(calculator: AnyCalculator, values: SlotValues): StripSet {
  const input: Record<string, Value> = {};
  const output: Record<string, Result> = {};
  for (const [name, value] of Object.entries(values)) {
    if (Object.hasOwn(calculator.inputs, name)) {
      if (isInput(value)) input[name] = value;
    } else if (isResult(value)) output[name] = value;
  }
  return { input, output };
}

function isEmpty(values: SlotValues): boolean {
  return Object.keys(values).length === 0;
}

/** Fillings that wait, by calculator: nobody sees a slot inside a closed fold or off the screen. */
const waiting = new Map<string, () => void>();
let timer: ReturnType<typeof setTimeout> | undefined;
/** How long after the last key they are filled (ms). */
const quiet = 200;

/** Writes what waits, at once. */
export function fillWaiting(): void {
  clearTimeout(timer);
  timer = undefined;
  const all = [...waiting.values()];
  waiting.clear();
  for (const fill of all) fill();
}

function fillLater(id: string, fill: () => void): void {
  if (waiting.size === 0) {
    // Whoever opens a fold first sees the numbers of now.
    document.addEventListener('toggle', fillWaiting, { capture: true, once: true });
  }
  waiting.set(id, fill);
  clearTimeout(timer);
  timer = setTimeout(fillWaiting, quiet);
}

/**
 * Writes the slots that `isWanted` picks. All are gone through in their order, so that each value on the way finds
 * those before it.
 */
function fill(
  places: readonly Place[],
  isWanted: (place: Place) => boolean,
  calculator: AnyCalculator,
  sets: Readonly<Record<string, SlotSet>>,
  system: System,
  work: typeof valueOnTheWay | undefined,
): void {
  const all: Record<string, SlotValues> = Object.fromEntries(
    Object.entries(sets).map(([set, { values }]) => [set, values]),
  );
  for (const place of places) {
    const { marks, name, set, slot, text: node } = place;
    const { postfix } = marks;
    if (postfix === undefined && !isWanted(place)) continue;
    let values = all[set] ?? {};
    // Asked of the set itself: a value on the way that could not be worked is none.
    const isWithout = isEmpty(sets[set]?.values ?? {});
    // Without a result the case that was shown stays, and its numbers are dashes.
    if (marks.if !== undefined && !isWithout) slot.hidden = work?.(marks.if, values) !== 1;
    if (postfix !== undefined) {
      const value = work?.(postfix, values);
      values = { ...values, [name]: value };
      all[set] = values;
      if (!isWanted(place)) continue;
    }
    if (node === undefined) continue;
    markStale(slot, sets[set]?.stale);
    const text = isWithout
      ? emptySlot(marks)
      : slotContent(marks, name, calculator, values, system, sets[set]?.plusMinus);
    if (node.data !== text) node.data = text;
  }
}

/** What stands in a slot of a set without a result. */
function emptySlot({ also }: SlotMarks): string {
  return also === undefined ? noNumber : '';
}

/** Marks a slot whose number is of a last good result with what that was for; the style sheet prints it. */
function markStale(slot: HTMLElement, stale: string | undefined): void {
  if (slot.dataset['stale'] === stale) return;
  if (stale === undefined) delete slot.dataset['stale'];
  else slot.dataset['stale'] = stale;
}

/** A slot, how it is marked, and what hides it. */
interface Place {
  readonly slot: HTMLElement;
  readonly marks: SlotMarks & { readonly postfix?: string; readonly if?: string };
  readonly name: string;
  readonly set: string;
  /** The text itself: changing it in place costs the page less than a new one. None of a case, which holds slots. */
  readonly text: Text | undefined;
  readonly folds: readonly HTMLDetailsElement[];
  readonly block: Block;
}

function foldsAround(slot: Element): readonly HTMLDetailsElement[] {
  const folds: HTMLDetailsElement[] = [];
  let fold = slot.closest('details');
  while (fold !== null) {
    folds.push(fold);
    fold = fold.parentElement?.closest('details') ?? null;
  }
  return folds;
}

function textOf(slot: HTMLElement): Text {
  const { firstChild } = slot;
  if (firstChild instanceof Text && slot.childNodes.length === 1) return firstChild;
  const text = document.createTextNode(slot.textContent);
  slot.replaceChildren(text);
  return text;
}

/**
 * The slots and the validity strips of one calculator, wherever the page has them. They are sought once, since
 * they stand in the page's fixed text.
 */
export class Slots {
  readonly #calculator: AnyCalculator;
  readonly #places: readonly Place[];
  readonly #strips: Strips;
  readonly #blocks = new Map<Element, Block>();
  readonly #tell: (seen: boolean) => void;
  readonly #work: typeof valueOnTheWay | undefined;

  /**
   * @param root where to look; the page
   * @param tell hears whether any of it is on the screen, each time that may have changed
   * @param work works the values on the way and the cases; only a page that has some need have fetched it
   */
  constructor(
    root: ParentNode,
    calculator: AnyCalculator,
    tell: (seen: boolean) => void,
    work: typeof valueOnTheWay | undefined,
  ) {
    this.#calculator = calculator;
    this.#tell = tell;
    this.#work = work;
    const slots = root.querySelectorAll<HTMLElement>(
      `[data-v^="${calculator.id}."], [data-case^="${calculator.id}."]`,
    );
    this.#places = [...slots].map((slot) => {
      const marks = { ...slot.dataset };
      const [, name = '', set = ''] = (marks['v'] ?? marks['case'] ?? '').split('.');
      return {
        slot,
        marks,
        name,
        set,
        text: marks['v'] === undefined ? undefined : textOf(slot),
        folds: foldsAround(slot),
        block: this.#blockOf(slot),
      };
    });
    this.#strips = new Strips(root, calculator, (strip) => this.#blockOf(strip));
    if (this.#blocks.size === 0) tell(false);
  }

  #blockOf(slot: Element): Block {
    const around = slot.closest('p, li, table, figure, section, details, dl') ?? slot;
    const known = this.#blocks.get(around);
    if (known !== undefined) return known;
    const block: Block = { seen: true };
    this.#blocks.set(around, block);
    watchScreen(around, (seen) => {
      block.seen = seen;
      if (seen) fillWaiting();
      this.#tell([...this.#blocks.values()].some((each) => each.seen));
    });
    return block;
  }

  /**
   * Writes the numbers: `data-v="calculator.name.set"` with a fixed unit in `data-unit` or else the reader's,
   * `data-figures` and `data-guarded`. A slot with `data-postfix` is a value on the way to a result, worked here;
   * a part marked `data-case` in the place of `data-v` is shown only where its `data-if` works to 1.
   * `set` is baseline, candidate, or `both` for a comparison. The marks on the validity strips move with them. What
   * is folded away or off the screen follows when it is opened or approached, when the page is printed, or once
   * the keys are quiet.
   *
   * @param sets SI values of inputs, outputs and comparisons; a set without a result leaves a dash in its slots
   */
  fill(sets: SlotSets, system: System): void {
    const calculator = this.#calculator;
    const stripOf = ({ values }: SlotSet): StripSet | undefined =>
      isEmpty(values) ? undefined : parted(calculator, values);
    const strips = { baseline: stripOf(sets.baseline), candidate: stripOf(sets.candidate) };
    const isSeen = ({ block, folds }: Place): boolean =>
      block.seen && folds.every((fold) => fold.open);
    fill(this.#places, isSeen, calculator, sets, system, this.#work);
    this.#strips.mark(strips, system, ({ seen }) => seen);
    waiting.delete(calculator.id);
    if (this.#places.every(isSeen) && this.#strips.every(({ seen }) => seen)) return;
    fillLater(calculator.id, () => {
      fill(this.#places, () => true, calculator, sets, system, this.#work);
      this.#strips.mark(strips, system, () => true);
    });
  }
}
