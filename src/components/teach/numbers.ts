import type { AnyCalculator } from '../../calculators/define.ts';
import { calculators } from '../../calculators/index.ts';
import { demoWork } from '../calculator/demo-work.ts';
import { declared, noNumber, slotContent } from '../slots/content.ts';

const all: Readonly<Record<string, AnyCalculator>> = calculators;

/** A number's place: `{calculator.name}` of the baseline or of both sets, `{calculator.name@candidate}`. */
const place = /\{([^{}]*)\}/gu;
const parts = /^([a-z0-9-]+)\.(\w+)(@candidate)?$/u;

/**
 * One number of the invented example, as `<V>` shows it on the topic's page.
 *
 * @param inside what stands between the braces
 * @throws Error for a calculator or a name that is not there, and where the example has no such number
 */
function numberAt(inside: string): string {
  const [, of = '', name = '', set] = parts.exec(inside) ?? [];
  const calculator = all[of];
  if (calculator === undefined)
    throw new Error(`{${inside}}: write {calculator.name} or {calculator.name@candidate}.`);
  if (declared(calculator, name) === undefined)
    throw new Error(`{${inside}}: the calculator ${of} has no such number.`);
  const { sets, comparison } = demoWork(calculator);
  const isComparison = Object.hasOwn(calculator.comparisons ?? {}, name);
  const { input, output, uncertainty } = sets[set === undefined ? 'baseline' : 'candidate'];
  const text = slotContent(
    {},
    name,
    calculator,
    isComparison ? (comparison ?? {}) : { ...input, ...output },
    'metric',
    isComparison ? undefined : uncertainty,
  );
  if (text === noNumber) throw new Error(`{${inside}}: the example has no number there.`);
  return text;
}

/** A text with the numbers of the example in their places, worked at build, so that none can go stale. */
export function withNumbers(text: string): string {
  return text.replace(place, (_, inside: string) => numberAt(inside));
}
