/** One turn in this many ms: slow enough to follow an arrow with the eye. */
const turn = 8000;
/** Storing at every pixel of a drag would work every calculator of the page each time. */
const pause = 150;

/** A number that is moved in the figure and runs ahead of the notebook, which takes it a moment later. */
export class MovedNumber {
  readonly #stored: () => number;
  readonly #keep: (value: number) => void;
  #value: number = $derived.by(() => this.#stored());
  #timer: ReturnType<typeof setTimeout> | undefined;

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
    this.#timer ??= setTimeout(() => this.store(), pause);
  }
  store(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#keep(this.#value);
  }
  leave(): void {
    clearTimeout(this.#timer);
  }
}

/** Turns a crank angle [°] by itself, or by 15° at a time where motion is to be reduced. */
export class CrankTurn {
  readonly #angle: MovedNumber;
  #frame: number | undefined = $state();

  constructor(angle: MovedNumber) {
    this.#angle = angle;
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
      this.#angle.move((Math.floor(this.#angle.value / 15) * 15 + 15) % 360);
      return;
    }
    let last = performance.now();
    const step = (time: number): void => {
      this.#angle.show((this.#angle.value + (Math.max(0, time - last) * 360) / turn) % 360);
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
