import type { AnyCalculator } from '../../calculators/define.ts';
import type { Step } from '../../calculators/step.ts';
import type { Kind } from '../../units/kinds.ts';
import { declared } from '../slots/content.ts';

/** The units a formula's numbers stand in unless the step names others: coherent, but angles in degrees. */
const coherent: Readonly<Record<Kind, string>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  secondMoment: 'm4',
  mass: 'kg',
  density: 'kg/m3',
  unbalance: 'kgm',
  inertia: 'kgm2',
  angle: 'deg',
  angularSpeed: 'rad/s',
  angularAcceleration: 'rad/s2',
  speed: 'm/s',
  acceleration: 'm/s2',
  force: 'N',
  torque: 'Nm',
  energy: 'J',
  power: 'W',
  specificEnergy: 'J/kg',
  pressure: 'Pa',
  viscosity: 'm2/s',
  temperature: 'K',
  expansion: 'perK',
  torsionalStiffness: 'Nm/rad',
  frequency: 'Hz',
  time: 's',
  ratio: 'ratio',
  count: 'count',
};

/** What a name means to a calculator's working. */
export interface Known {
  readonly symbol: string;
  readonly label: string;
  readonly kind: Kind | undefined;
  readonly isList: boolean;
  readonly isOptional: boolean;
}

/** What a name means to a calculator's working. Throws, naming it, when it is not declared. */
export function know(calculator: AnyCalculator, name: string): Known {
  const entry = declared(calculator, name);
  const step = calculator.steps.find(({ of }) => of === name);
  if (entry === undefined && step === undefined)
    throw new Error(`it uses "${name}", which is no input, no output and worked by no step`);
  if (entry === undefined) {
    if (step?.symbol === undefined)
      throw new Error(`"${name}" is no output, so its step needs a symbol and a kind of its own`);
    return {
      symbol: step.symbol,
      label: step.say,
      kind: step.kind ?? 'ratio',
      isList: false,
      isOptional: false,
    };
  }
  const whole = entry as { readonly symbol: string; readonly label: string };
  return {
    symbol: whole.symbol,
    label: whole.label,
    kind: 'kind' in entry ? entry.kind : undefined,
    isList: 'type' in entry && entry.type === 'list',
    isOptional: 'optional' in entry && entry.optional === true,
  };
}

/** The unit in which a step's line shows a kind. */
export function unitIn(step: Step, kind: Kind): string {
  return step.units?.[kind] ?? coherent[kind];
}

/** The options of a choice with their labels. Throws, naming it, when it is no choice. */
export function optionsOf(
  calculator: AnyCalculator,
  choice: string,
): Readonly<Record<string, string>> {
  const entry = calculator.inputs[choice];
  if (entry?.type === 'choice') return entry.options;
  throw new Error(`it compares "${choice}" with an option, but that is no choice`);
}
