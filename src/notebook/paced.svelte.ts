import { untrack } from 'svelte';
import type { SetId } from '../calculators/define.ts';
import { arrivals } from './arrivals.svelte.ts';
import { notebook } from './notebook.svelte.ts';
import type { SetView, WorkView } from './work.svelte.ts';

/** How long after the last change a part that is off the screen follows (ms). */
const quiet = 150;

const all = new Set<Pace>();
/** What follows in the frame that comes. */
const due = new Set<Pace>();

/** Makes every part of the page follow now: it is about to be printed. */
export function catchUpAll(): void {
  for (const pace of all) pace.catchUp();
}

/** Lets a part follow once the page has shown what follows at once: a task after the next frame has been begun. */
function catchUpSoon(pace: Pace): void {
  // Only the first asks for a frame, so that changes which come faster than frames put nothing off.
  if (due.size === 0)
    requestAnimationFrame(() => {
      setTimeout(() => {
        const waiting = [...due];
        due.clear();
        for (const each of waiting) each.catchUp();
      });
    });
  due.add(pace);
}

/**
 * Says when a part of the page follows the notebook: while it can be seen, at every key, or where it is late, one
 * frame after the results; else once the keys are quiet. What nobody sees costs nothing while somebody types.
 */
export class Pace {
  /** True while the part is on the screen. */
  seen = $state(true);
  readonly #isLate: boolean;
  #turn = $state(0);

  /** @param how `late` lets a part that is seen follow one frame late; without it the part follows at once */
  constructor({ seen = true, late = false }: { seen?: boolean; late?: boolean } = {}) {
    this.seen = seen;
    this.#isLate = late;
    // On the server every page of every reader would stay in it.
    if (typeof window !== 'undefined') all.add(this);
  }

  /** What `read` gives: live, else as of the last time that {@link catchUp} ran. For a derived value. */
  now<T>(read: () => T): T {
    if (this.seen && !this.#isLate) return read();
    void this.#turn;
    return untrack(read);
  }

  /** Makes the part follow now, seen or not. */
  catchUp(): void {
    this.#turn += 1;
  }

  /** Catches up when it is time. Call inside an effect root. */
  follow(): void {
    $effect(() => {
      if (this.seen && !this.#isLate) return undefined;
      void notebook.revision;
      void arrivals();
      if (this.seen) {
        catchUpSoon(this);
        return undefined;
      }
      const timer = setTimeout(() => {
        this.catchUp();
      }, quiet);
      return () => {
        clearTimeout(timer);
      };
    });
  }
}

class PacedSet implements SetView {
  readonly #set: SetView;
  readonly #pace: Pace;
  readonly #evaluation = $derived.by(() => this.#pace.now(() => this.#set.evaluation));
  readonly #input = $derived.by(() => this.#pace.now(() => this.#set.input));
  readonly #typed = $derived.by(() => this.#pace.now(() => this.#set.typed));
  readonly #output = $derived.by(() => this.#pace.now(() => this.#set.output));
  readonly #stale = $derived.by(() => this.#pace.now(() => this.#set.stale));
  readonly #standing = $derived.by(() => this.#pace.now(() => this.#set.standing));
  readonly #uncertainty = $derived.by(() => this.#pace.now(() => this.#set.uncertainty));

  constructor(set: SetView, pace: Pace) {
    this.#set = set;
    this.#pace = pace;
  }
  get evaluation(): SetView['evaluation'] {
    return this.#evaluation;
  }
  get input(): SetView['input'] {
    return this.#input;
  }
  get typed(): SetView['typed'] {
    return this.#typed;
  }
  get output(): SetView['output'] {
    return this.#output;
  }
  get stale(): boolean {
    return this.#stale;
  }
  get standing(): SetView['standing'] {
    return this.#standing;
  }
  get uncertainty(): SetView['uncertainty'] {
    return this.#uncertainty;
  }
}

/** A work as one part of the page sees it, at that part's own {@link Pace}. */
export class PacedWork implements WorkView {
  readonly #work: WorkView;
  readonly calculator: WorkView['calculator'];
  readonly sets: Readonly<Record<SetId, SetView>>;
  readonly #pace: Pace;
  readonly #comparison = $derived.by(() => this.#pace.now(() => this.#work.comparison));
  readonly #onePart = $derived.by(() => this.#pace.now(() => this.#work.onePart));
  readonly #system = $derived.by(() => this.#pace.now(() => this.#work.system));

  /** @param work where it is one part's view already, the part within follows what that view follows */
  constructor(work: WorkView, pace: Pace) {
    // Behind another view it might catch up before that view does, and never hear of it.
    const followed = work instanceof PacedWork ? work.#work : work;
    this.#work = followed;
    this.#pace = pace;
    this.calculator = followed.calculator;
    this.sets = {
      baseline: new PacedSet(followed.sets.baseline, pace),
      candidate: new PacedSet(followed.sets.candidate, pace),
    };
  }
  get comparison(): WorkView['comparison'] {
    return this.#comparison;
  }
  get onePart(): WorkView['onePart'] {
    return this.#onePart;
  }
  get system(): WorkView['system'] {
    return this.#system;
  }
  put(set: SetId, name: string, text: string, unit: string): void {
    this.#work.put(set, name, text, unit);
    // What is dragged follows the hand, and not a frame later.
    this.#pace.catchUp();
  }
}
