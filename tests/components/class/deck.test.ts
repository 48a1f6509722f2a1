import { describe, expect, it } from 'vitest';
import {
  moved,
  placeText,
  readPlace,
  within,
  type Place,
  type Screen,
} from '../../../src/components/class/deck.ts';

const screens: readonly Screen[] = [0, 1, 3].map((steps, at) => ({
  parts: [],
  name: String(at),
  steps,
}));

describe('going through the screens', () => {
  it('takes the steps of a screen before the next, there and back, and stays at either end', () => {
    let place: Place = { screen: 0, step: 0 };
    const way: string[] = [];
    for (let press = 0; press < 8; press += 1) {
      place = moved(screens, place, 1);
      way.push(placeText(place));
    }
    expect(way).toEqual(['2', '2.1', '3', '3.1', '3.2', '3.3', '3.3', '3.3']);
    const back: string[] = [];
    for (let press = 0; press < 8; press += 1) {
      place = moved(screens, place, -1);
      back.push(placeText(place));
    }
    expect(back).toEqual(['3.2', '3.1', '3', '2.1', '2', '1', '1', '1']);
  });

  it('an address names a place, and one that is not there the nearest', () => {
    for (const text of ['1', '2.1', '3.3'])
      expect(placeText(within(screens, readPlace(text)))).toBe(text);
    for (const [text, place] of [
      ['9', '3'],
      ['2.9', '2.1'],
      ['0', '1'],
      ['', '1'],
      ['-1', '1'],
      ['2.x', '1'],
      ['<b>', '1'],
    ] as const)
      expect(placeText(within(screens, readPlace(text)))).toBe(place);
    expect(within([], { screen: 3, step: 1 })).toEqual({ screen: 0, step: 0 });
  });
});
