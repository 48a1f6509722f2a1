import type { Entry } from '../../../src/calculators/define.ts';
import { rangeInSI } from '../../../src/calculators/evaluate.ts';
import { gasPort as calculator } from '../../../src/calculators/rings/gas-port.ts';
import { withUsual } from '../../../src/calculators/rings/gas-port.engine.ts';
import {
  gasPort,
  type GasPortInput,
  type GasPortResult,
} from '../../../src/core/rings/gas-port.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { readQuantity } from '../../../src/units/read.ts';
import { must } from '../must.ts';

export type Drawn = Parameters<typeof calculator.compute>[0];
export type Range = 'hard' | 'usual';

const entries: readonly Entry[] = Object.values(calculator.inputs);

/** Where a range is so long that its low end would never be met, it is drawn by ratio. */
function within([low, high]: readonly [number, number], share: number): number {
  if (low > 0 && high > 20 * low) return low * (high / low) ** share;
  return low + (high - low) * share;
}

/**
 * One value for each input, each from the range that `rangeOf` names, stretched to `beyond` times its ends.
 * Half of the optional ones are left empty.
 */
export function drawn(random: () => number, rangeOf: (name: string) => Range, beyond = 1): Drawn {
  const input: Record<string, number | string> = {};
  for (const entry of entries) {
    const share = random();
    if (entry.type === 'choice') {
      const options = Object.keys(entry.options);
      input[entry.name] = must(options[Math.floor(share * options.length)]);
    } else if (entry.type === 'number' && (entry.optional !== true || random() < 0.5)) {
      const [low, high] = rangeInSI(entry, rangeOf(entry.name));
      const value = within([low > 0 ? low / beyond : low, high * beyond], share);
      input[entry.name] = entry.kind === 'count' ? Math.round(value) : value;
    }
  }
  return input as unknown as Drawn;
}

/** The invented example of a set. */
export function demo(set: 'baseline' | 'candidate'): Drawn {
  const input: Record<string, number | string> = {};
  for (const entry of entries) {
    if (entry.type === 'choice') input[entry.name] = entry.demo[set];
    if (entry.type !== 'number') continue;
    const read = readQuantity(entry.demo[set], { ...entry, unit: entry.metric });
    if (!read.ok) throw new Error(read.say);
    input[entry.name] = read.si;
  }
  return input as unknown as Drawn;
}

export function coreInput(input: Drawn): GasPortInput {
  return withUsual(input);
}

/** What core makes of it, or how it refuses. */
export function worked(input: Drawn, fineness = 1): GasPortResult | OutOfDomain {
  try {
    return gasPort(coreInput(input), fineness);
  } catch (error) {
    if (error instanceof OutOfDomain) return error;
    throw error;
  }
}

/** The six ways of porting, by name; those that are the same ring may share a trace. */
export function six(result: GasPortResult) {
  const { entered, unported, plugged, shut } = result;
  return {
    entered,
    unported,
    plugged,
    shutEntered: shut.entered,
    shutUnported: shut.unported,
    shutPlugged: shut.plugged,
  };
}

/** Steps of implicit Euler that all rings took together. */
export function workOf(result: GasPortResult): number {
  const traces = new Set(Object.values(six(result)).map(({ trace }) => trace));
  return [...traces].reduce((sum, { work }) => sum + work, 0);
}
