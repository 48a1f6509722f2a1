import { numberOf } from '../read.ts';
import type { FigureWork } from '../types.ts';

/** Storing at every pixel of a drag would work every calculator of the page each time. */
const pause = 150;
/** What ends a move: then it is stored at once, since what is asked next, a link, takes it along. */
const ends = ['change', 'pointerup', 'keyup'];

/** A number that is moved in the figure and runs ahead of the notebook, which takes it a moment later. */
export class MovedNumber {
  readonly #stored: () => number;
  readonly #keep: (value: number) => void;
  #value: number = $derived.by(() => this.#stored());
  #timer: ReturnType<typeof setTimeout> | undefined;
  readonly #store = (): void => {
    this.store();
  };

  constructor(stored: () => number, keep: (value: number) => void) {
    this.#stored = stored;
    this.#keep = keep;
  }
  get value(): number {
    return this.#value;
  }
  /** Shows the value without storing it. */
  show(value: number): void {
    this.#value = value;
  }
  move(value: number): void {
    this.#value = value;
    if (this.#timer !== undefined) return;
    this.#timer = setTimeout(this.#store, pause);
    for (const end of ends) document.addEventListener(end, this.#store);
  }
  store(): void {
    this.leave();
    this.#keep(this.#value);
  }
  leave(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    for (const end of ends) document.removeEventListener(end, this.#store);
  }
}

/** An angle brought into 0 to 360 degrees; 360 itself is kept, so that a slider can rest at its end. */
export function withinTurn(degrees: number): number {
  return degrees >= 0 && degrees <= 360 ? degrees : ((degrees % 360) + 360) % 360;
}

/** The page's crank angle [°], 0 to 360, moved in a figure. */
export function movedCrankAngle(work: () => FigureWork): MovedNumber {
  return new MovedNumber(
    // Rounded where radians leave only noise, so that 230° is not shown as 230.0°.
    () =>
      withinTurn(
        Math.round(((numberOf(work().sets.baseline.input, 'crankAngle') ?? 0) * 180e8) / Math.PI) /
          1e8,
      ),
    (degrees) => {
      work().put('baseline', 'crankAngle', String(Math.round(degrees * 100) / 100), 'deg');
    },
  );
}

/** Turns a crank angle [°] by itself, or by 15° at a time where motion is to be reduced. */
export class CrankTurn {
  readonly #angle: MovedNumber;
  readonly #turn: number;
  readonly #move: (degrees: number) => void;
  #frame: number | undefined = $state();

  /**
   * @param turn one turn in this many ms: slow enough to follow what turns with the eye
   * @param move moves the crank at once, where it does not turn by itself
   */
  constructor(angle: MovedNumber, turn: number, move: (degrees: number) => void) {
    this.#angle = angle;
    this.#turn = turn;
    this.#move = move;
  }
  get turns(): boolean {
    return this.#frame !== undefined;
  }
  stop(): void {
    if (this.#frame === undefined) return;
    cancelAnimationFrame(this.#frame);
    this.#frame = undefined;
    this.#angle.store();
  }
  start(): void {
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      this.#move(Math.floor(this.#angle.value / 15) * 15 + 15);
      return;
    }
    let last = performance.now();
    const step = (time: number): void => {
      this.#angle.show((this.#angle.value + (Math.max(0, time - last) * 360) / this.#turn) % 360);
      last = time;
      this.#frame = requestAnimationFrame(step);
    };
    this.#frame = requestAnimationFrame(step);
  }
  leave(): void {
    if (this.#frame !== undefined) cancelAnimationFrame(this.#frame);
    this.#angle.leave();
  }
}
