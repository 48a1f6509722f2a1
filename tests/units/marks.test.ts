import { describe, expect, it } from 'vitest';
import { doubleMark, nameOfPart, tidyMarks, withMark } from '../../src/units/marks.ts';

describe('marks of parts', () => {
  it('stay in their places, and one that is written leaves the others', () => {
    expect(withMark(undefined, 2, 'C')).toEqual(['', '', 'C']);
    expect(withMark(['A', 'B', 'C'], 1, 'X')).toEqual(['A', 'X', 'C']);
    expect(withMark(['A'], 0, '')).toEqual(['']);
  });

  it('are kept in one line, no longer than is stamped, without those after the last', () => {
    expect(tidyMarks([' A\n1 ', '', 'B', '', ''])).toEqual(['A 1', '', 'B']);
    expect(tidyMarks(['x'.repeat(40)])).toEqual(['x'.repeat(32)]);
    // What is outside the first plane of characters is not cut in two.
    expect(tidyMarks(['𝟘'.repeat(33)])).toEqual(['𝟘'.repeat(32)]);
    for (const none of [undefined, [], ['', ' ']]) expect(tidyMarks(none)).toBeUndefined();
  });

  it('name a part, which else goes by its place from 1', () => {
    expect(nameOfPart(['A', ''], 0)).toBe('A');
    expect(nameOfPart(['A', ''], 1)).toBe('2');
    expect(nameOfPart(undefined, 7)).toBe('8');
  });

  it('tell which two parts have the same', () => {
    expect(doubleMark(['A', '', 'B', '', 'B'])).toBe('B');
    expect(doubleMark(['A', '', ''])).toBeUndefined();
    expect(doubleMark(undefined)).toBeUndefined();
  });
});
