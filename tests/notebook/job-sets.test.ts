import { describe, expect, test } from 'vitest';
import {
  asJobSets,
  named,
  nameOfSet,
  plainSets,
  shownAs,
  withAnother,
  without,
} from '../../src/notebook/job-sets.ts';
import type { JobSets } from '../../src/notebook/values.ts';

function another(sets: JobSets): JobSets {
  const more = withAnother(sets);
  if (more === undefined) throw new Error('there are four');
  return more;
}

describe('the sets of a job', () => {
  test('are two to four; a new one stands as candidate', () => {
    const three = another(plainSets);
    expect(three.kept).toEqual(['baseline', 'candidate', 'third']);
    expect(three.shown).toEqual({ baseline: 'baseline', candidate: 'third' });
    const four = another(three);
    expect(four.kept).toEqual(['baseline', 'candidate', 'third', 'fourth']);
    expect(withAnother(four)).toBeUndefined();
  });

  test('one that is laid into the other column changes places with what stood there', () => {
    const swapped = shownAs(plainSets, 'baseline', 'candidate');
    expect(swapped.shown).toEqual({ baseline: 'candidate', candidate: 'baseline' });
    expect(shownAs(swapped, 'candidate', 'candidate').shown).toEqual(plainSets.shown);
    const three = shownAs(another(plainSets), 'baseline', 'third');
    expect(three.shown).toEqual({ baseline: 'third', candidate: 'baseline' });
    expect(shownAs(three, 'baseline', 'third')).toEqual(three);
  });

  test('one that was added can go, and the column takes one that is left; the first two stay', () => {
    const three = named(another(plainSets), 'third', 'Forged');
    const gone = without(three, 'third');
    expect(gone).toEqual({ ...plainSets, names: {} });
    expect(without(three, 'candidate')).toBe(three);
    const aside = shownAs(three, 'candidate', 'candidate');
    expect(without(aside, 'third').shown).toEqual(plainSets.shown);
  });

  test('are called as the reader says, cut to what heads a column', () => {
    const sets = named(plainSets, 'candidate', '<b>hill</b> "parts" =1+1');
    expect(nameOfSet(sets, 'candidate')).toBe('<b>hill</b> "parts" =1+1');
    expect(nameOfSet(sets, 'baseline')).toBe('Baseline');
    expect(nameOfSet(named(sets, 'candidate', '  '), 'candidate')).toBe('Candidate');
    expect(nameOfSet(named(sets, 'third', 'x'.repeat(1000)), 'third')).toHaveLength(40);
  });

  test('come back as they were kept', () => {
    const sets = named(shownAs(another(another(plainSets)), 'baseline', 'third'), 'fourth', 'Cast');
    expect(asJobSets(JSON.parse(JSON.stringify(sets)))).toEqual(sets);
    const swapped = shownAs(plainSets, 'baseline', 'candidate');
    expect(asJobSets(JSON.parse(JSON.stringify(swapped)))).toEqual(swapped);
  });

  test.each([
    [undefined],
    ['sets'],
    [{ kept: 'third', names: [], shown: 7 }],
    [{ kept: ['ninth', null], names: { baseline: 3, ninth: 'x' }, shown: { baseline: 'third' } }],
    [{ kept: [], shown: { baseline: 'fourth', candidate: null } }],
  ])('%j is as if nothing was said', (damaged) => {
    expect(asJobSets(damaged)).toEqual(plainSets);
  });

  test('the same set in both columns is no comparison: one of them gives way', () => {
    const { shown } = asJobSets({ shown: { baseline: 'candidate', candidate: 'candidate' } });
    expect(new Set(Object.values(shown)).size).toBe(2);
  });
});
