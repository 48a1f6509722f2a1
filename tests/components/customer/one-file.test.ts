import { expect, test } from 'vitest';
import { escapeHtml, oneFile, type Told } from '../../../src/components/customer/one-file.ts';

const hostile = `<script>alert(1)</script> "x" & 'y' =1+1`;
const told: Told = {
  title: hostile,
  from: hostile,
  message: `${hostile}\nsecond line`,
  sentences: [hostile],
  heads: [hostile, 'Now'],
  rows: [[hostile, { value: hostile }, { value: '558 g', change: hostile }]],
  limits: 'These are results of models.',
  href: 'https://shop.example/customer/#job=x&note=y&v=1',
};

test('a copy holds what was written as text, and runs nothing', () => {
  const html = oneFile(told);
  const tags = new Set(Array.from(html.matchAll(/<\/?([a-z][a-z0-9]*)/g), ([, tag]) => tag));
  expect([...tags].sort()).toEqual(
    ['a', 'blockquote', 'br', 'h1', 'html', 'meta', 'p', 'small', 'style', 'table', 'tbody'].concat(
      [...['td', 'th', 'thead', 'title', 'tr']],
    ),
  );
  // Nine places (the title stands twice), and each shows it whole.
  expect(html.split(escapeHtml(hostile)).length - 1).toBe(9);
  expect(html).toContain("default-src 'none'");
  expect(html).not.toMatch(/src=|@import|url\(/);
  expect(html).toContain('href="https://shop.example/customer/#job=x&amp;note=y&amp;v=1"');
});

test('an empty message and no sentence leave no empty lines', () => {
  const html = oneFile({ ...told, from: '', message: '', sentences: [] });
  expect(html).not.toMatch(/<blockquote>|<p><small><\/small>|<p><\/p>/);
});

test('is a small part of what a mail carries', () => {
  const rows = Array.from(
    { length: 8 },
    () =>
      [
        'A long label of a line',
        { value: '1685.2 g' },
        { value: '1233.1 g', change: '−452.1 g' },
      ] as const,
  );
  expect(oneFile({ ...told, rows, message: 'x'.repeat(2000) }).length).toBeLessThan(10_000);
});

test('escapes every sign that HTML reads', () => {
  expect(escapeHtml(`<>&"'`)).toBe('&lt;&gt;&amp;&quot;&#39;');
});
