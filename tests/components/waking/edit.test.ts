import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edited, samePlace, type Selected } from '../../../src/components/waking/edit.ts';

/** A text with `|` at the caret or round the selection. */
function at(marked: string): Selected {
  const text = marked.replaceAll('|', '');
  const start = marked.indexOf('|');
  return { text, start, end: marked.lastIndexOf('|') - (marked.split('|').length - 2) };
}

describe('an edit made again in a number that was stepped', () => {
  it.each([
    ['a figure typed at the end', '998|', '9980|', '1001', '10010'],
    ['a figure taken from the end', '998|', '99|', '1001', '100'],
    ['a figure typed in front', '|998', '2|998', '1001', '21001'],
    ['the next one typed in front', '2|998', '25|998', '21001', '251001'],
    ['a figure typed between', '428|.0', '4285|.0', '429.0', '4295.0'],
    ['a figure deleted behind the caret', '428|.0', '428|0', '430.0', '4300'],
    ['all of it typed over', '|998|', '5|', '1001', '5'],
    ['all but the first figure typed over', '9|98|', '97|', '1001', '107'],
    ['a digit added by a finer step', '430|', '4305|', '430.1', '430.15'],
    ['a unit typed behind', '998|', '998 |', '1001', '1001 '],
  ])('%s', (_, before, after, now, wanted) => {
    expect(edited(now, at(before), at(after))).toBe(wanted);
  });

  it('takes the whole text where it was no single edit', () => {
    expect(edited('1001', at('998|'), at('12|3'))).toBe('123');
  });

  it('is the edit itself where nothing was stepped', () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(), fc.nat(), fc.string(), (text, one, other, typed) => {
        const places = [one % (text.length + 1), other % (text.length + 1)];
        const [start, end] = [Math.min(...places), Math.max(...places)];
        const caret = start + typed.length;
        const after = text.slice(0, start) + typed + text.slice(end);
        expect(edited(text, { text, start, end }, { text: after, start: caret, end: caret })).toBe(
          after,
        );
      }),
    );
  });
});

it('finds each place of a text in the same text', () => {
  fc.assert(
    fc.property(fc.string(), fc.nat(), (text, number) => {
      const place = number % (text.length + 1);
      expect(samePlace(place, text, text)).toBe(place);
    }),
  );
});
