/** The shortest time between two sentences read out, in ms; faster ones cut each other off. */
const apart = 700;

/** The text of a `role=status` line: takes every sentence, shows at most one in 700 ms, always the latest. */
export class Announcer {
  text = $state('');
  #next: string | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  say(sentence: string): void {
    this.#next = sentence;
    if (this.#timer === undefined) this.#show();
  }

  #show(): void {
    if (this.#next === undefined) {
      this.#timer = undefined;
      return;
    }
    this.text = this.#next;
    this.#next = undefined;
    this.#timer = setTimeout(() => {
      this.#show();
    }, apart);
  }
}
