import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { History, noting, type Change, type Step } from '../../src/notebook/history.ts';
import { openShelf, type Shelf } from '../../src/notebook/storage.ts';
import { FakeStorage } from './fake-world.ts';

/** A history at a clock that the test moves, and a shelf whose changes it notes. */
function begun(): { history: History; shelf: Shelf; kept: Shelf; wait: (ms: number) => void } {
  let now = 0;
  const history = new History(() => now);
  const kept = openShelf(() => new FakeStorage());
  return {
    history,
    kept,
    shelf: noting(kept, history),
    wait: (ms) => {
      now += ms;
    },
  };
}
function put(kept: Shelf, step: Step | undefined, end: keyof Omit<Change, 'key'>): void {
  for (const change of step ?? []) {
    const text = change[end];
    if (text === undefined) kept.remove(change.key);
    else kept.set(change.key, text);
  }
}

describe('steps back', () => {
  test('keys typed into one field without a pause are one step, and after a pause another', () => {
    const { history, shelf, wait } = begun();
    for (const text of ['3', '31', '318']) {
      shelf.set('a', text);
      wait(300);
    }
    wait(2000);
    shelf.set('a', '3180');
    expect(history.back()).toEqual([{ key: 'a', before: '318', after: '3180' }]);
    expect(history.back()).toEqual([{ key: 'a', before: undefined, after: '318' }]);
    expect(history.back()).toBeUndefined();
    expect(history.canUndo).toBe(false);
    expect(history.canRedo).toBe(true);
  });

  test('another field is another step; what changes nothing is none', () => {
    const { history, shelf } = begun();
    shelf.set('a', '1');
    shelf.set('b', '2');
    shelf.set('b', '2');
    shelf.remove('c');
    expect(history.back()).toEqual([{ key: 'b', before: undefined, after: '2' }]);
    expect(history.back()).toEqual([{ key: 'a', before: undefined, after: '1' }]);
  });

  test('what is done together is one step, also within another, and what it leaves as it was is none', () => {
    const { history, shelf } = begun();
    shelf.set('a', '1');
    history.together(() => {
      shelf.set('a', '2');
      history.together(() => {
        shelf.set('a', '3');
        shelf.set('b', '4');
      });
      shelf.set('c', '5');
      shelf.remove('c');
    });
    expect(history.back()).toEqual([
      { key: 'a', before: '1', after: '3' },
      { key: 'b', before: undefined, after: '4' },
    ]);
    expect(history.back()).toHaveLength(1);
    history.together(() => undefined);
    expect(history.canUndo).toBe(false);
  });

  test('a new step ends what could be done again', () => {
    const { history, shelf } = begun();
    shelf.set('a', '1');
    history.back();
    expect(history.canRedo).toBe(true);
    shelf.set('b', '1');
    expect(history.canRedo).toBe(false);
    expect(history.forth()).toBeUndefined();
  });

  test('two hundred are kept', () => {
    const { history, shelf } = begun();
    for (let count = 0; count < 250; count += 1) shelf.set(`k${String(count)}`, '1');
    let steps = 0;
    while (history.back() !== undefined) steps += 1;
    expect(steps).toBe(200);
  });

  test('come back on the next page; damaged ones are none', () => {
    const { history, shelf } = begun();
    shelf.set('a', '1');
    shelf.set('b', '2');
    history.back();
    const next = new History();
    next.read(history.written());
    expect(next.forth()).toEqual([{ key: 'b', before: undefined, after: '2' }]);
    for (const text of [undefined, '', '{}', '[1,2]', '[[[{}]],[]]', '[[3],[]]', '[[[null]],[]]']) {
      next.read(text);
      expect([next.canUndo, next.canRedo], text).toEqual([false, false]);
    }
  });

  test('all the way back is where it began, and all the way forth where it ended', () => {
    const change = fc.record({
      key: fc.constantFrom('a', 'b', 'c'),
      text: fc.option(fc.string(), { nil: undefined }),
      wait: fc.constantFrom(0, 5000),
    });
    fc.assert(
      fc.property(fc.array(fc.array(change, { maxLength: 4 }), { maxLength: 30 }), (groups) => {
        const { history, shelf, kept, wait } = begun();
        const state = (): (string | undefined)[] => ['a', 'b', 'c'].map((key) => kept.get(key));
        const act = ({ key, text, wait: ms }: (typeof groups)[number][number]): void => {
          if (text === undefined) shelf.remove(key);
          else shelf.set(key, text);
          wait(ms);
        };
        for (const [at, group] of groups.entries())
          if (at % 2 === 0) group.forEach(act);
          else history.together(() => group.forEach(act));
        const end = state();
        while (history.canUndo) put(kept, history.back(), 'before');
        expect(state()).toEqual([undefined, undefined, undefined]);
        while (history.canRedo) put(kept, history.forth(), 'after');
        expect(state()).toEqual(end);
      }),
    );
  });
});
