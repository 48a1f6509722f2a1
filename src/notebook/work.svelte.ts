import { untrack } from 'svelte';
import type { Absent, AnyCalculator, Entry, Result, SetId, Value } from '../calculators/define.ts';
import { compareSets } from '../calculators/evaluate.ts';
import { propagate, propagation, type PropagatedOutputs } from '../calculators/uncertainty.ts';
import { cameLate } from './arrivals.svelte.ts';
import { evaluate, rememberingReader, type Evaluation } from './evaluation.ts';
import { notebook } from './notebook.svelte.ts';
import { standingOf, type Standing, type TypedValues } from './standing.ts';
import type { StoredValue } from './values.ts';

/** A result that was good, with the inputs it was computed from and the ± that they had. */
interface Good {
  readonly input: Readonly<Record<string, Value>>;
  readonly output: Readonly<Record<string, Result>>;
  readonly plusMinus: Readonly<Record<string, number>>;
  /** The inputs as they were typed. */
  readonly typed: TypedValues;
}

/** What stood in the fields, and what came of it. */
interface Worked {
  readonly evaluation: Evaluation;
  readonly typed: TypedValues;
}

/** One set as a part of the page sees it. */
export interface SetView {
  readonly evaluation: Evaluation;
  /** The inputs of the result shown: the present ones, or the last that gave a result. */
  readonly input: Readonly<Record<string, Value>> | undefined;
  /** The same as they were typed, with what was said of them. */
  readonly typed: TypedValues | undefined;
  /** The result shown. */
  readonly output: Readonly<Record<string, Result>> | undefined;
  /** True when the result shown is not of the numbers that stand in the fields. */
  readonly stale: boolean;
  /** What stops a set that is stale, and what the result still shown was for; undefined for any other. */
  readonly standing: Standing | undefined;
  /** The ± of every output; absent while it is being worked out, and without a ± in the inputs. */
  readonly uncertainty: PropagatedOutputs | undefined;
}

/** Both sets worked through one calculator, as a part of the page sees them. */
export interface WorkView {
  readonly calculator: AnyCalculator;
  readonly sets: Readonly<Record<SetId, SetView>>;
  /** Results that need both sets; absent while one of them has none. */
  readonly comparison: Readonly<Record<string, number | Absent>> | undefined;
  /** Inputs that measure one and the same part of both sets. */
  readonly onePart: readonly string[];
  /** The reader's system of units. */
  readonly system: 'metric' | 'inch';
  /** Writes a value into the notebook as if the reader had typed it. */
  put(set: SetId, name: string, text: string, unit: string): void;
}

/** How long after the last key the ± is worked out, and how long one slice of that work may take (ms). */
const quiet = 120;
const slice = 6;

/** One of the two sets, worked through one calculator, live. */
export class SetWork implements SetView {
  readonly #calculator: AnyCalculator;
  readonly id: SetId;
  #last: Good | undefined;
  readonly #read = rememberingReader();
  /** A slow model's evaluation, as of the last time the keys were quiet; the server's only one. */
  #settled: Worked | undefined = $state.raw(undefined);
  readonly #worked: Worked = $derived.by(() => this.#settled ?? this.#work());
  readonly #good: Good | undefined = $derived.by(() => {
    const { evaluation, typed } = this.#worked;
    const { input, output, plusMinus } = evaluation;
    // Kept outside the reactive graph on purpose: it is memory of what was good, not a source of change.
    if (input !== undefined && output !== undefined)
      this.#last = { input, output, plusMinus, typed };
    return this.#last;
  });
  readonly #standing: Standing | undefined = $derived.by(() => {
    const { evaluation, typed } = this.#worked;
    return evaluation.output === undefined
      ? standingOf(this.#calculator, evaluation, typed, this.#good?.typed)
      : undefined;
  });
  uncertainty: PropagatedOutputs | undefined = $state.raw(undefined);

  constructor(calculator: AnyCalculator, id: SetId) {
    this.#calculator = calculator;
    this.id = id;
    // On the server nothing is typed, and a derived value would be worked anew at every reading.
    const server = typeof window === 'undefined';
    if (calculator.pace === 'idle' || server) this.#settled = this.#work();
    // A slow model's ± comes later in the browser; the server has the time to print it.
    if (calculator.pace !== 'idle' || server) this.uncertainty = this.#propagate();
  }

  #work(): Worked {
    const typed: Record<string, StoredValue> = {};
    const evaluation = evaluate(
      this.#calculator,
      (entry) => (typed[entry.name] ??= notebook.value(this.id, entry)),
      this.#read,
    );
    return { evaluation, typed };
  }

  get evaluation(): Evaluation {
    return this.#worked.evaluation;
  }
  get input(): Readonly<Record<string, Value>> | undefined {
    return this.#good?.input;
  }
  get typed(): TypedValues | undefined {
    return this.#good?.typed;
  }
  get output(): Readonly<Record<string, Result>> | undefined {
    return this.#good?.output;
  }
  get stale(): boolean {
    return this.evaluation.output === undefined;
  }
  get standing(): Standing | undefined {
    return this.#standing;
  }

  /** The ± of every output at once; for the server, where nothing waits for a frame. */
  #propagate(): PropagatedOutputs | undefined {
    const { input, plusMinus } = this.evaluation;
    if (input === undefined || Object.keys(plusMinus).length === 0) return undefined;
    return propagate(this.#calculator, input, plusMinus);
  }

  /**
   * Follows the notebook: once the keys are quiet, works the ± of the result shown out in short slices. A last
   * good result keeps its ±. Call inside an effect root.
   */
  follow(): void {
    if (this.#calculator.pace === 'idle') this.#settle();
    let worked: Good | undefined;
    $effect(() => {
      // What changed is asked when the keys are quiet: to know it now, a set that nobody sees would be worked.
      void notebook.revision;
      void this.#settled;
      let timer = setTimeout(() => {
        const good = untrack(() => this.#good);
        if (good === worked) return;
        const keep = (uncertainty: PropagatedOutputs | undefined): void => {
          worked = good;
          this.uncertainty = uncertainty;
          cameLate();
        };
        const { input, plusMinus } = good ?? {};
        if (input === undefined || plusMinus === undefined || Object.keys(plusMinus).length === 0) {
          keep(undefined);
          return;
        }
        const run = propagation(this.#calculator, input, plusMinus);
        const names = [...run.inputs];
        const work = (): void => {
          const end = performance.now() + slice;
          while (names.length > 0 && performance.now() < end) run.step(names.shift() ?? '');
          if (names.length > 0) timer = setTimeout(work, 0);
          else keep(run.result());
        };
        work();
      }, quiet);
      return () => {
        clearTimeout(timer);
      };
    });
  }

  /** Evaluates a slow model anew each time its numbers have been quiet for a while. */
  #settle(): void {
    let first = true;
    $effect(() => {
      for (const entry of Object.values(this.#calculator.inputs)) notebook.value(this.id, entry);
      if (first) {
        first = false;
        return undefined;
      }
      const timer = setTimeout(() => {
        this.#settled = this.#work();
        cameLate();
      }, quiet);
      return () => {
        clearTimeout(timer);
      };
    });
  }
}

/** Both sets of the notebook worked through one calculator; shared by its form, figures and prose. */
export class Work implements WorkView {
  readonly calculator: AnyCalculator;
  readonly sets: Readonly<Record<SetId, SetWork>>;
  readonly #comparison: Readonly<Record<string, number | Absent>> | undefined = $derived.by(() =>
    this.#compare(),
  );

  readonly #onePart: readonly string[] = $derived.by(() =>
    Object.values(this.calculator.inputs)
      .filter((entry) => notebook.isOnePart(entry))
      .map(({ name }) => name),
  );

  constructor(calculator: AnyCalculator) {
    this.calculator = calculator;
    this.sets = {
      baseline: new SetWork(calculator, 'baseline'),
      candidate: new SetWork(calculator, 'candidate'),
    };
  }

  get comparison(): Readonly<Record<string, number | Absent>> | undefined {
    return this.#comparison;
  }
  get onePart(): readonly string[] {
    return this.#onePart;
  }

  #compare(): Readonly<Record<string, number | Absent>> | undefined {
    const { baseline, candidate } = this.sets;
    if (baseline.input === undefined || baseline.output === undefined) return undefined;
    if (candidate.input === undefined || candidate.output === undefined) return undefined;
    return compareSets(this.calculator, {
      baseline: { input: baseline.input, output: baseline.output },
      candidate: { input: candidate.input, output: candidate.output },
    });
  }

  get system(): 'metric' | 'inch' {
    return notebook.system;
  }

  put(set: SetId, name: string, text: string, unit: string): void {
    const entry: Entry | undefined = this.calculator.inputs[name];
    if (entry === undefined) return;
    notebook.put(set, name, { text, unit }, entry);
  }
}
