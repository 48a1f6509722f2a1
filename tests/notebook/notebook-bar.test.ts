import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { optional } from '../../src/calculators/define.ts';
import { crankAngle, pinOffset, pistonMass } from '../../src/calculators/quantities.ts';
import NotebookBar from '../../src/components/bar/NotebookBar.svelte';

describe('the notebook bar as the server writes it', () => {
  const entries = [pistonMass, crankAngle, optional(pinOffset)];
  const html = render(NotebookBar, { props: { entries } }).body;

  test('says that the numbers are invented, in a line that needs no script', () => {
    expect(html).toContain('All numbers on this page are an invented example.');
    const line = /<p class="bar-note[^>]*>/.exec(html)?.[0];
    expect(line).not.toContain('data-needs-script');
  });

  test('hides every control where there is no script', () => {
    const outside = html.replace(/<(div|p)[^>]*data-needs-script[^>]*>.*?<\/\1>/gs, '');
    expect(html).toMatch(/<button/);
    expect(outside).not.toMatch(/<(?:button|input|select|textarea)/);
  });

  test('labels every field, offers no placeholder, and writes no style that the policy would refuse', () => {
    expect(html).not.toMatch(/placeholder|maxlength|\sstyle=|type="number"/);
    const fields = html.match(/<input/g)?.length ?? 0;
    expect(html.match(/<label[^>]*>(?:(?!<\/label>).)*<input/gs)).toHaveLength(fields);
    expect(html.match(/role="status"/g)).toHaveLength(1);
  });

  test('is in metric units until the reader says otherwise', () => {
    expect(/<input[^>]*value="metric"[^>]*>/.exec(html)?.[0]).toContain('checked');
    expect(/<input[^>]*value="inch"[^>]*>/.exec(html)?.[0]).not.toContain('checked');
  });
});
