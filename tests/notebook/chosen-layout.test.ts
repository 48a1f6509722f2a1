import { expect, test, vi } from 'vitest';
import { crankLayout, ownLayoutFrom } from '../../src/calculators/balance/crank-layout.choices.ts';
import { makeJob, readJob, wholeJob } from '../../src/notebook/jobs.ts';
import type * as NotebookFile from '../../src/notebook/notebook.svelte.ts';
import { FakeTab } from './fake-world.ts';

vi.mock(import('../../src/notebook/notebook.svelte.ts'), async (original) => {
  const file = await original();
  return { ...file, notebook: new file.Notebook(new FakeTab()) } as typeof NotebookFile;
});
const { notebook } = await import('../../src/notebook/notebook.svelte.ts');
const { chooseLayout, chosenLayout, chosenLayouts } =
  await import('../../src/notebook/chosen-layout.ts');

const stored = (): unknown => {
  const { values } = wholeJob(notebook.device, notebook.jobId);
  return [values.baseline, values.candidate].map((set) => set[crankLayout.name]?.text);
};

test('the example’s layout is nobody’s choice; one that is chosen is that of both sets', () => {
  notebook.openJob('');
  expect(notebook.value('baseline', crankLayout).text).toBe('v8-cross');
  expect(chosenLayouts()).toEqual([]);
  chooseLayout('v2-45');
  // The candidate of the example would keep the example's beside it.
  expect(stored()).toEqual(['v2-45', 'v2-45']);
  expect(chosenLayouts()).toEqual([{ layout: 'v2-45', sets: ['baseline', 'candidate'] }]);
  notebook.undo();
  expect(stored()).toEqual([undefined, undefined]);
  expect(chosenLayouts()).toEqual([]);
});

test('in an own job the candidate has the baseline’s until it is given one of its own', () => {
  notebook.openJob(makeJob(notebook.device, 'Own'));
  expect(chosenLayouts()).toEqual([]);
  chooseLayout('inline-6');
  expect(stored()).toEqual(['inline-6', undefined]);
  expect(chosenLayout('candidate')).toBe('inline-6');
  notebook.put('candidate', crankLayout.name, { text: 'v8-flat', unit: '' }, crankLayout);
  expect(chosenLayouts()).toEqual([
    { layout: 'inline-6', sets: ['baseline'] },
    { layout: 'v8-flat', sets: ['candidate'] },
  ]);
  // It is no number, and told by itself.
  expect(readJob(notebook.device, notebook.jobId)).toMatchObject({
    numbers: 0,
    layout: 'inline-6',
  });
  chooseLayout('single');
  expect(chosenLayouts()).toEqual([{ layout: 'single', sets: ['baseline', 'candidate'] }]);
  chooseLayout(undefined);
  expect(stored()).toEqual([undefined, undefined]);
});

test('a layout that the table does not have is none', () => {
  notebook.openJob(makeJob(notebook.device, 'Later'));
  notebook.put('baseline', crankLayout.name, { text: 'v16-135', unit: '' }, crankLayout);
  expect(chosenLayout('baseline')).toBeUndefined();
});

test('a layout that the reader writes is a choice as long as it can be worked; undo brings the ready one back', () => {
  // Keys with a pause between them are steps of their own.
  vi.useFakeTimers({ toFake: ['performance'] });
  notebook.openJob(makeJob(notebook.device, 'Written'));
  chooseLayout('v8-cross');
  vi.advanceTimersByTime(2000);
  const own = ownLayoutFrom('v8-cross').replace('90 at', '80 at');
  notebook.put('baseline', crankLayout.name, { text: own, unit: '' }, crankLayout);
  expect(chosenLayouts()).toEqual([{ layout: own, sets: ['baseline', 'candidate'] }]);
  vi.advanceTimersByTime(2000);
  const broken = own.replace('80 at', '8o at');
  notebook.put('baseline', crankLayout.name, { text: broken, unit: '' }, crankLayout);
  expect(chosenLayouts()).toEqual([]);
  // Nothing of what was typed is lost.
  expect(stored()).toEqual([broken, undefined]);
  notebook.undo();
  expect(stored()).toEqual([own, undefined]);
  notebook.undo();
  expect(stored()).toEqual(['v8-cross', undefined]);
  vi.useRealTimers();
});
