import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

type Theme = 'light' | 'dark';

const css = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');
const tokens = new Map(
  [...css.matchAll(/--([\w-]+):\s*light-dark\((#[0-9a-f]{6}),\s*(#[0-9a-f]{6})\)/g)].map(
    ([, name = '', light = '', dark = '']) => [name, { light, dark }] as const,
  ),
);

/** Relative luminance of a colour (WCAG 2.2, definition of relative luminance). */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((start) => {
    const channel = Number.parseInt(hex.slice(start, start + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string, theme: Theme): number {
  const [a, b] = [one, other].map((name) => {
    const token = tokens.get(name);
    if (token === undefined) throw new Error(`tokens.css has no --${name}`);
    return luminance(token[theme]);
  }) as [number, number];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

describe.each<Theme>(['light', 'dark'])('colours by %s', (theme) => {
  test.each(['paper', 'surface'])('text reads on %s', (ground) => {
    expect(contrast('ink', ground, theme)).toBeGreaterThanOrEqual(7);
    for (const text of ['quiet', 'baseline-text', 'candidate-text']) {
      expect(contrast(text, ground, theme), `--${text} on --${ground}`).toBeGreaterThanOrEqual(4.5);
    }
  });

  test.each(['paper', 'surface'])('lines and frames of fields stand out on %s', (ground) => {
    for (const line of ['baseline', 'candidate', 'rule-strong', 'focus', 'caution']) {
      expect(contrast(line, ground, theme), `--${line} on --${ground}`).toBeGreaterThanOrEqual(3);
    }
  });
});
