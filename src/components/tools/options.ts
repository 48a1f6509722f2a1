import type { AnyCalculator } from '../../calculators/define.ts';
import { continuousInputs, numericOutputs } from '../../calculators/evaluate.ts';

interface Option {
  readonly id: string;
  readonly label: string;
}

/** The inputs that can take any value in between, as a list to choose from. */
export function inputOptions(calculator: AnyCalculator): readonly Option[] {
  return continuousInputs(calculator).map(({ name, label }) => ({ id: name, label }));
}

/** The outputs that are a number, as a list to choose from. */
export function outputOptions(calculator: AnyCalculator): readonly Option[] {
  return numericOutputs(calculator).map((id) => ({
    id,
    label: calculator.outputs[id]?.label ?? id,
  }));
}
