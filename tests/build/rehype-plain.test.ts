import { unified } from '@astrojs/markdown-remark';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { expect, test } from 'vitest';
import { rehypePlain } from '../../src/build/rehype-plain.js';
import { remarkDisplayMath } from '../../src/build/remark-display-math.js';

async function html(markdown: string): Promise<string> {
  const processor = unified({
    remarkPlugins: [remarkMath, remarkDisplayMath],
    rehypePlugins: [
      [rehypeKatex, { output: 'mathml' }],
      [rehypePlain, { base: '/reference/' }],
    ],
  });
  const renderer = await processor.createRenderer({ syntaxHighlight: false } as never);
  return (await renderer.render(markdown)).code;
}

test('a table keeps its alignment without a style attribute', async () => {
  const page = await html('| a | b |\n| :-- | --: |\n| 1 | 2 |');
  expect(page).toContain('<td class="right">2</td>');
  expect(page).not.toMatch(/style=|align=/);
});

test('a formula is MathML alone, without the TeX it came from', async () => {
  const page = await html('where $\\lambda = r/L$ holds');
  expect(page).toContain('<mi>λ</mi>');
  expect(page).not.toMatch(/annotation|semantics|\\lambda|style=/);
});

test('dollar signs on the formula’s own line still set it apart', async () => {
  expect(await html('$$x = 1$$')).toContain('display="block"');
  expect(await html('$$\nx = 1\n$$')).toContain('display="block"');
  expect(await html('the line $$x = 1$$ in a sentence')).not.toContain('display="block"');
});

test('only a long formula takes the focus', async () => {
  expect(await html('$$x = 1$$')).not.toContain('tabindex');
  expect(await html(`$$x = ${'a + '.repeat(20)} b$$`)).toContain('tabindex="0"');
});

test('links from the root follow the path the site is served under', async () => {
  expect(await html('[a](/glossary/#throw)')).toContain('href="/reference/glossary/#throw"');
  expect(await html('[a](https://www.iso.org/)')).toContain('href="https://www.iso.org/"');
  expect(await html('[a](#here)')).toContain('href="#here"');
});

test('an index that is the name of a function stands alone: an index has one part', async () => {
  expect(await html('where $\\varphi_{\\max}$ holds')).toContain(
    '<msub><mi>φ</mi><mi>max</mi></msub>',
  );
});

test('a bracket keeps clear of the name of a function before it', async () => {
  const room = /<mi>max<\/mi><mo>\u2061<\/mo><mspace width="0.1em"><\/mspace>/;
  expect(await html('where $\\max(a, b)$ holds')).toMatch(room);
  expect(await html('where $\\max\\left(a, b\\right)$ holds')).toMatch(room);
  expect(await html('where $\\sin \\varphi$ holds')).not.toContain('mspace');
});
