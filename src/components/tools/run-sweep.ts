import type { AnyCalculator, NumberEntry, SetId, Value } from '../../calculators/define.ts';
import { sweepInSlices, sweepRange } from '../../calculators/sweep.ts';

/** One set's curve, in SI; a gap where the calculator refuses. `at` is the set's own present value. */
export interface SweepCurve {
  readonly set: SetId;
  readonly x: readonly number[];
  readonly y: readonly (number | undefined)[];
  readonly at: number | undefined;
}

interface Start {
  readonly set: SetId;
  readonly input: Readonly<Record<string, Value>> | undefined;
}

const points = 101;
const quiet = 150;
const slice = 6;

/**
 * Sweeps both sets in slices of a few milliseconds once the keys are quiet, and hands the finished curves
 * on. Returns what stops it.
 */
export function runSweep(
  calculator: AnyCalculator,
  starts: readonly Start[],
  entry: NumberEntry,
  output: string,
  done: (curves: readonly SweepCurve[]) => void,
): () => void {
  const present = starts.flatMap(({ input }) => {
    const value = input?.[entry.name];
    return typeof value === 'number' ? [value] : [];
  });
  const [from, to] = sweepRange(entry, ...present);
  const runs = starts.flatMap(({ set, input }) =>
    input === undefined
      ? []
      : [
          {
            set,
            at: input[entry.name],
            slices: sweepInSlices(calculator, input, {
              variable: entry.name,
              output,
              from,
              to,
              points,
            }),
          },
        ],
  );
  const tasks = runs.flatMap((run) => run.slices.x.map((_, index) => ({ run, index })));
  let next = 0;
  let timer = setTimeout(work, quiet);
  function work(): void {
    const end = performance.now() + slice;
    for (; next < tasks.length && performance.now() < end; next += 1) {
      const task = tasks[next];
      task?.run.slices.step(task.index);
    }
    if (next < tasks.length) {
      timer = setTimeout(work, 0);
      return;
    }
    done(
      runs.map(({ set, at, slices }) => ({
        set,
        ...slices.result(),
        at: typeof at === 'number' ? at : undefined,
      })),
    );
  }
  return () => {
    clearTimeout(timer);
  };
}
