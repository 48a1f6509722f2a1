import { describe, expect, it } from 'vitest';
import {
  readCount,
  readSeed,
  readSheetHash,
  sheetHash,
  type SheetFields,
} from '../../src/notebook/practice/sheet-address.ts';

const usual: SheetFields = {
  seed: '1',
  count: '1',
  kinds: ['number', 'choice'],
  units: 'mixed',
  print: 'all',
};

describe('the address of exercise sheets', () => {
  it('brings back what was chosen', () => {
    const fields: SheetFields = {
      seed: '8479',
      count: '30',
      kinds: ['order', 'read'],
      units: 'inch',
      print: 'key',
    };
    expect(readSheetHash(sheetHash(fields), usual)).toEqual({ fields, say: '' });
  });

  it('keeps what was typed wrong, and takes the rest as usual', () => {
    const { fields, say } = readSheetHash('#seed=%3Cb%3E&n=-1', usual);
    expect(fields).toEqual({ ...usual, seed: '<b>', count: '-1' });
    expect(say).toBe('');
    expect(readSheetHash('', usual)).toEqual({ fields: usual, say: '' });
  });

  it('says what it cannot do: another version, words that are unknown', () => {
    expect(readSheetHash('#seed=5&v=9', usual).say).toContain(
      'another version of the exercises (9;',
    );
    const { fields, say } = readSheetHash('#kinds=number.toString&units=constructor', usual);
    expect(fields).toEqual({ ...usual, kinds: ['number'] });
    expect(say).toBe(
      'The link has words that this page does not know: “toString”, “constructor”. They are passed over.',
    );
  });
});

describe('numbers of the form', () => {
  it('are whole and within their range, and said to be otherwise', () => {
    for (const [text, value] of [
      ['1', 1],
      [' 30 ', 30],
      ['007', 7],
    ] as const)
      expect(readCount(text)).toEqual({ ok: true, value });
    for (const text of ['', '0', '31', '1.5', '-1', 'three', '1e1'])
      expect(readCount(text).ok, text).toBe(false);
    expect(readSeed('999999999')).toEqual({ ok: true, value: 999_999_999 });
    expect(readSeed('0')).toEqual({ ok: true, value: 0 });
    for (const text of ['', '1234567890', '1.0', '−5']) expect(readSeed(text).ok, text).toBe(false);
  });
});
