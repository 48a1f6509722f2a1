import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import type { AnyCalculator, Entry } from '../../src/calculators/define.ts';
import { evaluate, readField, rememberingReader } from '../../src/notebook/evaluation.ts';
import { exampleOf } from '../../src/notebook/example.ts';
import type { StoredValue } from '../../src/notebook/values.ts';

const motion: AnyCalculator = calculators['piston-motion'];
const bobweight: AnyCalculator = calculators.bobweight;

/** The demo numbers with some of them replaced by what a reader types. */
function typed(changes: Readonly<Record<string, string>>) {
  return (entry: Entry): StoredValue => {
    const example = exampleOf('baseline', entry);
    const text = changes[entry.name];
    return text === undefined ? example : { text, unit: example.unit };
  };
}

describe('evaluate', () => {
  test('works the demo numbers of every calculator, both sets, to finite results', () => {
    for (const calculator of Object.values<AnyCalculator>(calculators)) {
      for (const set of ['baseline', 'candidate'] as const) {
        const worked = evaluate(calculator, (entry) => exampleOf(set, entry));
        expect(worked.output, `${calculator.id}, ${set}`).toBeDefined();
        for (const result of Object.values(worked.output ?? {}))
          if (typeof result === 'number') expect(Number.isFinite(result)).toBe(true);
      }
    }
  });

  test('says which field stops it, in the reader’s unit, and gives no result', () => {
    const worked = evaluate(motion, typed({ rodLength: '30' }));
    expect(worked.output).toBeUndefined();
    expect(worked.fields['rodLength']?.problem).toBe(
      'Rod length, centre to centre must be greater than half the stroke plus the offset (37.3\u00a0mm). You entered 30\u00a0mm.',
    );
  });

  test('refuses a negative mass in words', () => {
    const worked = evaluate(bobweight, typed({ pistonMass: '-5' }));
    expect(worked.fields['pistonMass']?.problem).toMatch(
      /^Piston, bare must be .* You entered -5\u00a0g\.$/,
    );
  });

  test.each([
    [
      'pinMasses',
      '120.2; 120.6',
      'Wrist pins, each must be at least as many as the pistons, 8. You entered 2.',
    ],
    [
      'pistonMasses',
      '428',
      'Wrist pins, each must be at most as many as the pistons, 1. You entered 8.',
    ],
    ['smallEndMasses', '0; 1; 1; 1; 1; 1; 1; 1', 'Small ends, each must be greater than 0\u00a0g.'],
  ])('says beside a list what is wrong with %s', (typedIn, text, sentence) => {
    const worked = evaluate(calculators['part-matching'], typed({ [typedIn]: text }));
    expect(worked.output).toBeUndefined();
    expect(worked.fault).toBeUndefined();
    expect(Object.values(worked.fields).map(({ problem }) => problem)).toContain(sentence);
  });

  test.each(['', 'heavy', '12 mm', '5 furlongs', '1/0 g', '1e999'])(
    'never throws for %j, and names the quantity',
    (text) => {
      const worked = evaluate(bobweight, typed({ pistonMass: text }));
      expect(worked.output).toBeUndefined();
      expect(worked.fields['pistonMass']?.problem).toMatch(/^Piston, bare/);
    },
  );

  test('computes what is unusual, and says what is usual', () => {
    const worked = evaluate(bobweight, typed({ pistonMass: '2000' }));
    expect(worked.output).toBeDefined();
    expect(worked.fields['pistonMass']?.remark).toMatch(/90.*650/);
  });

  test('never lets an overflow through', () => {
    const worked = evaluate(motion, typed({ maxSpeed: '1e308 rad/s' }));
    expect(worked.output).toBeUndefined();
    expect(worked.fault ?? worked.fields['maxSpeed']?.problem).toBeDefined();
  });

  test('leaves an empty optional input out instead of refusing it', () => {
    const worked = evaluate(motion, typed({ rodPoint: '' }));
    expect(worked.output).toBeDefined();
    expect(worked.input).not.toHaveProperty('rodPoint');
  });
});

test('a remembering reader reads again only what changed', () => {
  const read = rememberingReader();
  const entry = bobweight.inputs['pistonMass'];
  if (entry === undefined) throw new Error('no piston mass');
  const first = read(entry, { text: '428.0', unit: 'g' });
  expect(read(entry, { text: '428.0', unit: 'g' })).toBe(first);
  const next = read(entry, { text: '429.0', unit: 'g' });
  expect(next).toEqual(readField(entry, { text: '429.0', unit: 'g' }));
  expect(next).not.toEqual(first);
});
