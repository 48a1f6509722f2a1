import type { Step } from '../../calculators/step.ts';
import { namesIn, parseFormula } from './parse.ts';

/** The mark of a quantity in the TeX of a step that has no formula: `\q{name}`. */
export const mark = /\\q\{([A-Za-z][A-Za-z0-9]*)\}/gu;

/** The names marked in the TeX of a step, each once. */
export function marksIn(step: Step): readonly string[] {
  const marks = [...(step.tex?.text ?? '').matchAll(mark)];
  return [...new Set(marks.map(([, name]) => name ?? ''))];
}

/** The names that the line of a step uses, each once: those of its formula, or those marked in its TeX. */
export function usedBy(step: Step): readonly string[] {
  return step.formula === undefined ? marksIn(step) : namesIn(parseFormula(step.formula));
}
