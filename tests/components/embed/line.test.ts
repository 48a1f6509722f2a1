import { describe, expect, it } from 'vitest';
import { embedLine, fragmentOf, isSize } from '../../../src/components/embed/line.ts';

describe('the line that embeds a part', () => {
  const line = embedLine({
    address: 'https://host.example/embed/bobweight/#job=A&pistonMass=500g,400g&v=1',
    title: 'Rods "so" <b>',
    width: '100%',
    height: '900',
  });

  it('is one frame, with all that it says in attributes', () => {
    expect(line).toMatch(/^<iframe( [a-z]+="[^"<>]*")+><\/iframe>$/);
    expect(line).toContain('loading="lazy"');
    expect(line).toContain('width="100%" height="900"');
    expect(line).toContain('title="Rods &quot;so&quot; &lt;b&gt;, from Throwbook"');
  });

  it('brings the numbers of a link, its signs written as HTML asks', () => {
    expect(line).toContain('#job=A&amp;pistonMass=500g,400g&amp;v=1"');
  });

  it('lets the frame neither be one of its own site nor lead its page away', () => {
    expect(line).toContain('allow-scripts');
    expect(line).not.toMatch(/allow-same-origin|allow-top-navigation/);
  });
});

it.each([
  ['', ''],
  ['  ', ''],
  ['https://host.example/bobweight/#pistonMass=500g&v=1', '#pistonMass=500g&v=1'],
  ['https://host.example/bobweight/#pistonMass=\n500g&v=1', '#pistonMass=500g&v=1'],
  ['#bore%3D86mm', '#bore%3D86mm'],
  ['https://host.example/bobweight/', undefined],
  ['https://host.example/bobweight/#summary', undefined],
  ['pistonMass=500g', undefined],
])('of %j the fragment is %j', (link, fragment) => {
  expect(fragmentOf(link)).toBe(fragment);
});

it.each([
  ['900', true],
  ['100%', true],
  ['0', false],
  ['', false],
  ['12345', false],
  ['90 px', false],
  ['9"', false],
])('%j is a size: %j', (text, is) => {
  expect(isSize(text)).toBe(is);
});
