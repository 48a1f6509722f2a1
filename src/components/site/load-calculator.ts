import type { AnyCalculator } from '../../calculators/define.ts';

const declarations = import.meta.glob<Readonly<Record<string, AnyCalculator>>>([
  '../../calculators/*/*.ts',
  '!../../calculators/*/{quantities,notes}.ts',
  '!../../calculators/*/*.*.ts',
  '!../../calculators/practice/*.ts',
]);

/**
 * Fetches one calculator.
 *
 * @throws Error for an id that none has, and where it cannot be fetched
 */
export async function loadCalculator(id: string): Promise<AnyCalculator> {
  const path = Object.keys(declarations).find((each) => each.endsWith(`/${id}.ts`)) ?? '';
  const load = declarations[path];
  if (load === undefined) throw new Error(`There is no calculator “${id}”.`);
  const calculator = Object.values(await load()).find((value) => value.id === id);
  if (calculator === undefined) throw new Error(`The file of “${id}” declares another calculator.`);
  return calculator;
}
