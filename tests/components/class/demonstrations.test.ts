import { describe, expect, it } from 'vitest';
import {
  asDemonstrations,
  demonstrationsFile,
  mostDemonstrations,
  readDemonstrationsFile,
} from '../../../src/components/class/demonstrations.ts';

const one = {
  title: 'Bobweight: Figure',
  path: 'bobweight/class/#bore=86mm,86mm&v=1',
  note: '=1+1',
};

describe('a list of demonstrations', () => {
  it('comes back from its file as it was', () => {
    expect(readDemonstrationsFile(demonstrationsFile([one, one]))).toEqual({
      list: [one, one],
      lost: 0,
    });
  });

  it('leaves out what leads away from the site, and says how many', () => {
    const bad = [
      'https://elsewhere.example/class/',
      '//elsewhere.example/class/',
      'javascript:alert(1)',
      '../bobweight/class/',
      'bobweight/class/#<img>',
      'bobweight/',
      `bobweight/class/#${'a'.repeat(5000)}`,
    ].map((path) => ({ ...one, path }));
    expect(asDemonstrations([...bad, null, 5, { title: 1, path: one.path }, one])).toEqual({
      list: [one],
      lost: bad.length + 3,
    });
    const many = Array.from({ length: mostDemonstrations + 5 }, () => one);
    expect(asDemonstrations(many)).toMatchObject({ lost: 5 });
  });

  it('says what is wrong with another file', () => {
    for (const text of ['', '[]', '{"format":"other"}', 'null', '5'])
      expect(readDemonstrationsFile(text)).toEqual({
        say: 'This file holds no list of demonstrations. Nothing was changed.',
      });
    const later = demonstrationsFile([one]).replace('"version": 1', '"version": 2');
    expect(readDemonstrationsFile(later)).toHaveProperty('say');
    expect(asDemonstrations({})).toEqual({ list: [], lost: 0 });
  });
});
