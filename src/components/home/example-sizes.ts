import { calculators } from '../../calculators/index.ts';
import type { AnyCalculator, SetId } from '../../calculators/define.ts';
import { demoWork } from '../calculator/demo-work.ts';
import { numberOf } from '../figures/read.ts';
import { sizeNames, type Sizes } from './assembly.ts';

const all: readonly AnyCalculator[] = Object.values(calculators);

/** The sizes of one set of the example that the drawing needs [mm]. Throws if the example lacks one. */
export function exampleSizes(set: SetId): Sizes {
  function size(name: string): number {
    const asks = all.find((calculator) => Object.hasOwn(calculator.inputs, name));
    const metres = asks && numberOf(demoWork(asks).sets[set].input, name);
    if (metres === undefined) throw new Error(`The example has no “${name}” to draw.`);
    return metres * 1000;
  }
  return Object.fromEntries(sizeNames.map((name) => [name, size(name)])) as Sizes;
}
