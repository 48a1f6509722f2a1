import type { AnyCalculator, Result, SetId, Value } from '../../calculators/define.ts';
import { unitFor } from '../../calculators/output-unit.ts';
import { formatResult } from '../../units/result.ts';
import type { System } from '../../units/kinds.ts';
import type { Block } from '../waking/on-screen.ts';

type Strip = AnyCalculator['validity'][number];

/** Where on an axis a value can be, and where published cases stand, in SI; none where there is no case. */
export interface Span {
  readonly possible: readonly [number, number];
  readonly tested?: readonly [number, number] | undefined;
}

/** Width and height of a strip's drawing, in its own units. */
export const stripSize = { width: 600, height: 28 } as const;

/**
 * The axis of a strip in SI: from a little below what is possible to a little above, so that the empty ends
 * can be seen. Where nothing bounds the possible, the axis ends well beyond what is tested.
 */
export function stripAxis({ possible, tested = [0, 0] }: Span): {
  readonly from: number;
  readonly to: number;
} {
  const spread = Math.max(Math.abs(tested[0]), Math.abs(tested[1]));
  const least = Number.isFinite(possible[0]) ? possible[0] : Math.min(-1.5 * spread, tested[0]);
  const most = Number.isFinite(possible[1]) ? possible[1] : Math.max(1.5 * spread, tested[1]);
  const margin = 0.06 * (most - least);
  return { from: least - margin, to: most + margin };
}

/** Where a value stands on the drawing; values off the axis stand at its end. */
export function stripPlace(span: Span, value: number): number {
  const { from, to } = stripAxis(span);
  const share = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return Math.round(share * stripSize.width * 10) / 10;
}

/** In words, where a value stands. */
export function stripWords({ possible, tested }: Span, value: number): string {
  if (value < possible[0] || value > possible[1]) return 'outside what is possible';
  if (tested === undefined) return 'possible';
  // A published case and a reader's number may agree but for the last bit.
  const slack = 1e-9 * Math.max(Math.abs(tested[0]), Math.abs(tested[1]));
  return value >= tested[0] - slack && value <= tested[1] + slack
    ? 'inside the range of the published cases'
    : 'possible, but no published case reaches so far';
}

/** A number of a strip as it is printed. */
export function stripNumber(value: number, strip: Strip, system: System): string {
  return formatResult(value, unitFor(strip, system));
}

/** Inputs and outputs of one set, in SI. */
export interface StripSet {
  readonly input: Readonly<Record<string, Value>>;
  readonly output: Readonly<Record<string, Result>>;
}

/** Where a set stands on a strip, in SI; undefined when it has no place there. */
export function stripValue(strip: Strip, set: StripSet): number | undefined {
  const value = strip.of(set.input, set.output);
  return Number.isFinite(value) ? value : undefined;
}

/** A strip of the page's fixed text, and the parts of it that move. */
interface Drawn {
  readonly strip: Strip;
  readonly span: Span;
  readonly block: Block;
  readonly bounds: readonly { readonly si: number; readonly node: Element }[];
  readonly marks: Readonly<Record<string, Element | null>>;
  readonly places: Readonly<Record<string, Element | null>>;
}

function write(node: Element | null | undefined, text: string): void {
  if (node && node.textContent !== text) node.textContent = text;
}

/** The validity strips of one calculator. They are sought once, since they stand in the page's fixed part. */
export class Strips {
  readonly #drawn: readonly Drawn[];

  /** @param blockOf gives the stretch of the page that a strip stands in */
  constructor(root: ParentNode, calculator: AnyCalculator, blockOf: (strip: Element) => Block) {
    this.#drawn = calculator.validity.flatMap((strip) =>
      [...root.querySelectorAll<HTMLElement>(`[data-strip="${calculator.id}.${strip.id}"]`)].map(
        (drawn) => ({
          strip,
          span: { possible: strip.possible, tested: testedOf(drawn) },
          block: blockOf(drawn),
          bounds: [...drawn.querySelectorAll<HTMLElement>('[data-si]')].map((node) => ({
            si: Number(node.dataset['si']),
            node,
          })),
          marks: pair((set) => drawn.querySelector(`[data-mark="${set}"]`)),
          places: pair((set) => drawn.querySelector(`[data-place="${set}"]`)),
        }),
      ),
    );
  }

  /** True when every strip stands in a block of that sort. */
  every(isSo: (block: Block) => boolean): boolean {
    return this.#drawn.every(({ block }) => isSo(block));
  }

  /**
   * Moves the reader's marks on the strips and says in words where they stand.
   *
   * @param sets one without a result, or without a place on a strip, has no mark there
   * @param isWanted picks the strips by where they stand
   */
  mark(
    sets: Readonly<Record<SetId, StripSet | undefined>>,
    system: System,
    isWanted: (block: Block) => boolean,
  ): void {
    for (const { strip, span, block, bounds, marks, places } of this.#drawn) {
      if (!isWanted(block)) continue;
      for (const { si, node } of bounds) write(node, stripNumber(si, strip, system));
      for (const [id, set] of Object.entries(sets)) {
        const value = set && stripValue(strip, set);
        marks[id]?.setAttribute('visibility', value === undefined ? 'hidden' : 'visible');
        if (value === undefined) {
          write(places[id], '—');
          continue;
        }
        marks[id]?.setAttribute('transform', `translate(${stripPlace(span, value)} 0)`);
        write(places[id], `${stripNumber(value, strip, system)}, ${stripWords(span, value)}`);
      }
    }
  }
}

/** The range of the published cases, which the build wrote beside the drawing. */
function testedOf({ dataset }: HTMLElement): readonly [number, number] | undefined {
  const { testedFrom, testedTo } = dataset;
  return testedFrom === undefined || testedTo === undefined
    ? undefined
    : [Number(testedFrom), Number(testedTo)];
}

function pair<T>(find: (set: SetId) => T): Readonly<Record<SetId, T>> {
  return { baseline: find('baseline'), candidate: find('candidate') };
}
