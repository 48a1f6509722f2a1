import type { SetId } from '../../../calculators/define.ts';
import { unitFor } from '../../../calculators/output-unit.ts';
import { formatQuantity } from '../../../units/format.ts';
import { fromSI, toSI } from '../../../units/units.ts';
import type { FigureWork } from '../types.ts';

/** The diameters of both crankpins as a figure moves them: in the unit shown, by whole steps, inside a range. */
export class CrankpinSize {
  readonly #work: () => FigureWork;
  readonly #diameters: () => readonly number[];
  readonly unit = $derived.by(() => unitFor({ kind: 'length' }, this.#work().system));
  readonly step = $derived.by(() => (this.unit === 'in' ? 0.01 : 0.5));
  readonly range = $derived.by(
    () =>
      [
        Math.min(fromSI(toSI(20, 'mm'), this.unit), ...this.#shown()),
        Math.max(fromSI(toSI(90, 'mm'), this.unit), ...this.#shown()),
      ] as const,
  );

  /** @param diameters of the pins that are drawn [m]; none of them lies outside the range */
  constructor(work: () => FigureWork, diameters: () => readonly number[]) {
    this.#work = work;
    this.#diameters = diameters;
  }
  #shown(): readonly number[] {
    return this.#diameters().map((diameter) => fromSI(diameter, this.unit));
  }
  /** A length [m] as it is written. */
  size(length: number): string {
    return formatQuantity(length, this.unit, { decimals: this.unit === 'in' ? 4 : 3 });
  }
  /** Writes a diameter in the unit shown; the page's number and what is drawn follow. */
  put(set: SetId, to: number): void {
    this.#work().put(set, 'crankpinDiameter', String(Number(to.toFixed(4))), this.unit);
  }
  /** The diameter [m] that a drag asks for, in the unit shown, to whole steps and inside the range. */
  dragged(diameter: number): number {
    const wanted = Math.round(fromSI(diameter, this.unit) / this.step) * this.step;
    return Math.min(this.range[1], Math.max(this.range[0], wanted));
  }
}
