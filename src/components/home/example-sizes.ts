import type { AnyCalculator, SetId } from '../../calculators/define.ts';
import { demoWork } from '../calculator/demo-work.ts';
import { numberOf } from '../figures/read.ts';
import { sizeNames, type Sizes } from './assembly.ts';

/** The sizes of one set of the example that the drawing needs [mm], from all calculators. Throws if one is lacking. */
export function exampleSizes(calculators: readonly AnyCalculator[], set: SetId): Sizes {
  function size(name: string): number {
    const asks = calculators.find((calculator) => Object.hasOwn(calculator.inputs, name));
    const metres = asks && numberOf(demoWork(asks).sets[set].input, name);
    if (metres === undefined) throw new Error(`The example has no “${name}” to draw.`);
    return metres * 1000;
  }
  return Object.fromEntries(sizeNames.map((name) => [name, size(name)])) as Sizes;
}
