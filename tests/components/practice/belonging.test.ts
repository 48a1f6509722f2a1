import { describe, expect, it } from 'vitest';
import { bobweight } from '../../../src/calculators/balance/bobweight.ts';
import { bobweightError } from '../../../src/calculators/balance/bobweight-error.ts';
import { plansOf } from '../../../src/calculators/practice/plan.ts';
import { belongingTo } from '../../../src/components/practice/belonging.ts';
import { linesOf } from '../../../src/components/practice/lines-of.ts';

const plans = [bobweight, bobweightError].flatMap((each) => plansOf(each, linesOf(each)));
const of = (numbers: readonly string[], sheets: readonly string[] = []) =>
  belongingTo(plans, { numbers, sheets })?.id;

describe('the exercise that belongs to a section', () => {
  it('asks for what the section is about', () => {
    expect(of(['bobweight.bobweight'])).toBe('bobweight.bobweight');
    expect(of(['bobweight-error.pinUnbalance', 'bobweight-error.pinUnbalance'])).toBe(
      'bobweight-error.pinUnbalance',
    );
  });

  it('goes through what the section is about, where none asks for it', () => {
    expect(of(['bobweight.rotating', 'bobweight.carried'])).toBe('bobweight.bobweight');
  });

  it('is of the sheet that stands there, where the text has no number of an exercise', () => {
    expect(of([], ['bobweight-error'])).toBe('bobweight-error.planeUnbalance');
  });

  it('is none where the section is about nothing that is asked', () => {
    expect(of(['rod-weighing.closure'])).toBeUndefined();
    expect(of([])).toBeUndefined();
  });
});
