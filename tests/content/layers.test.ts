import { ESLint } from 'eslint';
import { describe, expect, test } from 'vitest';

const eslint = new ESLint();

async function broken(filePath: string, code: string): Promise<readonly string[]> {
  const [result] = await eslint.lintText(code, { filePath });
  return (result?.messages ?? [])
    .filter(({ ruleId }) => ruleId === 'no-restricted-imports')
    .map(({ message }) => message);
}

function importing(filePath: string, imported: string): string {
  const statement = `import * as taken from '${imported}';\ntaken;`;
  if (filePath.endsWith('.svelte')) return `<script lang="ts">${statement}</script>`;
  if (filePath.endsWith('.astro')) return `---\n---\n<script>${statement}</script>`;
  return statement;
}

describe('imports go one way', () => {
  test.each([
    ['src/core/sample.ts', '../units/units.ts'],
    ['src/core/math/sample.ts', '../../calculators/define.ts'],
    ['src/core/sample.ts', 'd3-array'],
    ['src/core/sample.ts', 'node:fs'],
    ['src/units/sample.ts', '../calculators/quantities.ts'],
    ['src/calculators/sample.ts', '../notebook/link.ts'],
    ['src/notebook/sample.ts', '../components/slots.ts'],
    ['src/checks/sample.ts', '../notebook/link.ts'],
    ['src/checks/sample.ts', '../components/slots.ts'],
    ['src/components/sample.ts', '../layouts/Page.astro'],
    ['src/components/Sample.svelte', '../calculators/index.ts'],
    ['src/components/Sample.svelte', '../checks/run.ts'],
    ['src/components/Sample.svelte', 'mathjs'],
    ['src/components/Sample.astro', '../calculators/index.ts'],
    ['src/pages/sample.astro', '../calculators/index.ts'],
    ['src/notebook/sample.svelte.ts', '../calculators/index.ts'],
    ['src/notebook/sample.svelte.ts', '../components/slots.ts'],
  ])('%s may not import %s', async (filePath, imported) => {
    expect(await broken(filePath, importing(filePath, imported))).toHaveLength(1);
  });

  test.each([
    ['src/core/sample.ts', './refuse.ts'],
    ['src/core/math/sample.ts', '../refuse.ts'],
    ['src/units/sample.ts', '../core/refuse.ts'],
    ['src/calculators/sample.ts', '../core/refuse.ts'],
    ['src/notebook/sample.ts', '../calculators/define.ts'],
    ['src/checks/sample.ts', '../calculators/define.ts'],
    ['src/components/Sample.svelte', '../notebook/notebook.svelte.ts'],
    ['src/components/sample.ts', '../checks/run.ts'],
    ['src/pages/sample.ts', '../components/slots.ts'],
  ])('%s may import %s', async (filePath, imported) => {
    expect(await broken(filePath, importing(filePath, imported))).toHaveLength(0);
  });

  test('the part of a page that runs at build may import the record of all calculators', async () => {
    const code =
      "---\nimport { calculators } from '../calculators/index.ts';\ncalculators;\n---\n<p></p>";
    expect(await broken('src/components/Sample.astro', code)).toHaveLength(0);
  });
});
