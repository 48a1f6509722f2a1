import type { Plan } from '../../calculators/practice/plan.ts';

/** What stands in a section of a topic's text. */
interface Section {
  /** Numbers in its text, as `calculator.name`. */
  readonly numbers: readonly string[];
  /** Ids of the calculators that stand in it. */
  readonly sheets: readonly string[];
}

/** An exercise is about what it asks; what it is worked by counts less. */
const asked = 4;

/** How much of a section an exercise is about. */
function shareOf(plan: Plan, { numbers, sheets }: Section): number {
  const way = new Set(plan.way.map(({ of }) => `${plan.calculator}.${of}`));
  const own = `${plan.calculator}.${plan.ask}`;
  const told = numbers.map((name) => (name === own ? asked : way.has(name) ? 1 : 0));
  const sum = told.reduce<number>((all, one) => all + one, 0);
  return sum + (sheets.includes(plan.calculator) ? 1 / 2 : 0);
}

/** The exercise that belongs to a section: the one most about its numbers, the first of equals; none about nothing. */
export function belongingTo(plans: readonly Plan[], section: Section): Plan | undefined {
  let best: Plan | undefined;
  for (const plan of plans) {
    const share = shareOf(plan, section);
    if (share > 0 && (best === undefined || share > shareOf(best, section))) best = plan;
  }
  return best;
}
