import type { SetId } from '../../calculators/define.ts';

/** A field of a calculator's form. */
export interface TypedField {
  readonly calculator: string;
  readonly set: SetId;
  readonly name: string;
}

/**
 * Where the reader is typing, so that nothing is said of a number before it is finished: a field left, or its number
 * entered, is written in no more.
 */
class Typing {
  /** The field being written in; undefined between two of them. */
  now: TypedField | undefined = $state.raw();
  /** The calculator that was written in last; it alone speaks of its results. */
  last: string | undefined = $state.raw();

  write(field: TypedField): void {
    this.now = field;
    this.last = field.calculator;
  }

  /** The number is finished. */
  finish(): void {
    this.now = undefined;
  }
}

/** The one place of the page. */
export const typing = new Typing();
