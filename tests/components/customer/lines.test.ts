import { expect, test } from 'vitest';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { calculators } from '../../../src/calculators/index.ts';
import { isReadersOwn } from '../../../src/calculators/readers-own.ts';
import { askedBy, lines } from '../../../src/components/customer/lines.ts';
import { isShown } from '../../../src/components/results/present.ts';

const all: Readonly<Record<string, AnyCalculator>> = calculators;

test.each(lines)('$id is a result or a number of its calculator', ({ calculator, name }) => {
  const declared = all[calculator];
  const output = declared?.outputs[name];
  const input = declared?.inputs[name];
  expect(output !== undefined ? isShown(output) : input?.type === 'number').toBe(true);
});

test('each line has its calculator fetched by a number that only the reader can have', () => {
  expect([...new Set(lines.map(({ calculator }) => calculator))].sort()).toEqual(
    Object.keys(askedBy).sort(),
  );
  for (const [calculator, name] of Object.entries(askedBy)) {
    const entry = all[calculator]?.inputs[name];
    expect(entry !== undefined && isReadersOwn(entry), `${calculator}: ${name}`).toBe(true);
  }
});
