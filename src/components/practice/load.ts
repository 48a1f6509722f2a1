import type { AnyCalculator } from '../../calculators/define.ts';

const declarations = import.meta.glob<Readonly<Record<string, AnyCalculator>>>([
  '../../calculators/*/*.ts',
  '!../../calculators/*/{quantities,notes}.ts',
  '!../../calculators/*/*.*.ts',
  '!../../calculators/practice/*.ts',
]);

/** The calculators of a page, fetched together, so that nothing more is wanted once it has begun. */
export async function loadCalculators(
  ids: readonly string[],
): Promise<Readonly<Record<string, AnyCalculator>>> {
  const all = await Promise.all(
    ids.map(async (id) => {
      const path = Object.keys(declarations).find((each) => each.endsWith(`/${id}.ts`)) ?? '';
      const found = Object.values((await declarations[path]?.()) ?? {}).find(
        (value) => value.id === id,
      );
      if (found === undefined) throw new Error(`There is no calculator “${id}”.`);
      return [id, found] as const;
    }),
  );
  return Object.fromEntries(all);
}
