import { ownLayoutFrom, type Layout } from '../../calculators/balance/crank-layout.choices.ts';
import {
  ownLayout,
  readOwnLayout,
  writtenThrows,
  type ReadLayout,
  type ThrowPart,
  type WrittenThrow,
} from '../../calculators/balance/own-layout.ts';
import type { ChoiceEntry, SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { steppedBy } from '../form/stepping.ts';
import { typing } from '../form/typing.svelte.ts';

/** Where a layout is written: the quantity, whose it is, and the form that its rows stand in. */
interface Place {
  readonly entry: ChoiceEntry;
  readonly set: SetId;
  readonly scope: string;
}

/** The throws of a set as rows of a table and as text; both write the one text that the notebook keeps. */
export class OwnRows {
  readonly #place: () => Place;
  /** What is being written, as typed: in a part of a row, `1 angle`, or in the `text`. */
  #held: { readonly where: string; readonly text: string } | undefined = $state.raw();
  readonly #text: string = $derived.by(() => {
    const { set, entry } = this.#place();
    return notebook.value(set, entry).text;
  });
  readonly rows: readonly WrittenThrow[] = $derived(writtenThrows(this.#text));
  readonly #read: ReadLayout = $derived(readOwnLayout(this.#text));

  constructor(place: () => Place) {
    this.#place = place;
  }

  /** What a part of a row shows: as typed while it is written in. */
  part(row: number, part: ThrowPart): string {
    return this.#shown(`${String(row)} ${part}`, this.rows[row]?.[part] ?? '');
  }
  writePart(row: number, part: ThrowPart, typed: string): void {
    this.#held = { where: `${String(row)} ${part}`, text: typed };
    this.#put(
      ownLayout(this.rows.map((one, at) => (at === row ? { ...one, [part]: typed } : one))),
    );
  }
  /** True for a part that stops the layout; nothing is said of it while it is written. */
  isFaulty(row: number, part: ThrowPart): boolean {
    const read = this.#read;
    return 'problem' in read && read.row === row && read.part === part && typing.now === undefined;
  }

  /** All rows as text, one a line. */
  get text(): string {
    return this.#shown('text', this.#text.replace(/^own:\s*/, '').replace(/;\s*/g, '\n'));
  }
  writeText(typed: string): void {
    this.#held = { where: 'text', text: typed };
    this.#put(`own: ${typed.replace(/^\s*own:\s*/, '').replace(/\s*[\n;]\s*/g, '; ')}`);
  }

  /** Takes a key in a part of a row: Enter finishes it, the arrows step a number. */
  press(event: KeyboardEvent, row: number, part: ThrowPart): void {
    if (event.key === 'Enter') typing.finish();
    if (event.ctrlKey || event.metaKey) return;
    const next = steppedBy(event, this.part(row, part));
    if (next === undefined) return;
    event.preventDefault();
    this.writePart(row, part, next);
  }
  /** The part or the text is left. */
  leave(): void {
    this.#held = undefined;
    typing.finish();
  }

  /** Adds a throw like the last one, a pin spacing further. */
  add(): void {
    const { angle = '0', place = '', banks = '0' } = this.rows.at(-1) ?? {};
    const last = Number(place.replace('−', '-'));
    const next = place === '' || Number.isNaN(last) ? '' : String(last + 1);
    this.#putWhole(ownLayout([...this.rows, { angle, place: next, banks }]));
  }
  remove(row: number): void {
    this.#putWhole(ownLayout(this.rows.filter((_, at) => at !== row)));
  }
  startFrom(layout: Layout): void {
    this.#putWhole(ownLayoutFrom(layout));
  }

  #shown(where: string, stored: string): string {
    return this.#held?.where === where ? this.#held.text : stored;
  }
  #put(text: string): void {
    const { entry, set, scope } = this.#place();
    typing.write({ calculator: scope, set, name: entry.name });
    notebook.put(set, entry.name, { text, unit: '' }, entry);
  }
  /** What no key writes is finished at once. */
  #putWhole(text: string): void {
    this.#put(text);
    typing.finish();
  }
}
