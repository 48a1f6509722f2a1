import { formulaFaults } from '../../../tests/calculators/formula-faults.ts';
import { fileOf } from '../../../tests/calculators/fault-text.ts';
import { calculators } from '../../calculators/index.ts';

/** What is done to each formula; the second shows where three times nothing is still nothing. */
const wrong = [
  (/** @type {string} */ formula) => `3 * (${formula})`,
  (/** @type {string} */ formula) => `(${formula}) + 1`,
];
const draws = 100;

/**
 * Every formula of a declaration that prints another one without a test that fails.
 *
 * @param {string} filter only files with this in their path
 * @returns {{ tried: { file: string, change: string }[], survivors: { file: string, change: string }[] }}
 */
export function tryFormulas(filter) {
  /** @type {{ file: string, change: string }[]} */
  const tried = [];
  /** @type {{ file: string, change: string }[]} */
  const survivors = [];
  /** @type {readonly import('../../calculators/define.ts').AnyCalculator[]} */
  const all = Object.values(calculators);
  for (const calculator of all)
    for (const step of calculator.steps) {
      const { of, formula } = step;
      const file = fileOf(calculator, of);
      if (formula === undefined || !file.includes(filter)) continue;
      for (const change of wrong) {
        const other = { ...step, formula: change(formula) };
        const mutant = { file, change: `${calculator.id}, ${of}: ${formula} → ${other.formula}` };
        tried.push(mutant);
        if (!isFaulty(calculator, other)) survivors.push(mutant);
      }
    }
  return { tried, survivors };
}

/**
 * @param {import('../../calculators/define.ts').AnyCalculator} calculator
 * @param {import('../../calculators/step.ts').Step} step
 */
function isFaulty(calculator, step) {
  try {
    return formulaFaults(calculator, step, draws, 1).length > 0;
  } catch {
    // Nothing that the page could print.
    return true;
  }
}
