import { decodeViews, encodeViews, type Views } from './views.ts';

/** What the figures of this page are set to. No number hangs on it, so that it is kept in links alone. */
class ShownViews {
  #opened: Views = $state.raw({});
  #told: Views = $state.raw({});

  /** What the link that was opened says; figures come to stand so. */
  get opened(): Views {
    return this.#opened;
  }
  /** A link is opened: empty when it says nothing of figures. */
  open(text: string): void {
    this.#opened = decodeViews(text);
  }
  /** A figure stands otherwise than it would by itself; `parts` is empty when it does not. */
  tell(figure: string, parts: Readonly<Record<string, string>>): void {
    this.#told = { ...this.#told, [figure]: parts };
  }
  /** For the link of this page; a figure that has not come to life yet still stands as the last link said. */
  get text(): string {
    return encodeViews({ ...this.#opened, ...this.#told });
  }
}

export const shownViews = new ShownViews();
