import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import { qrCode } from '../../src/notebook/qr.ts';

/** The dark modules that an outline of horizontal bars covers. */
function drawn(path: string, size: number): readonly (readonly boolean[])[] {
  const grid = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H(\d+)z/g)) {
    grid[Number(y)]?.fill(true, Number(x), Number(x) + Number(width));
  }
  return grid;
}

describe('a QR code', () => {
  const link = `https://shop.example/bobweight/#job=No.17&${'pistonMass=428.0g:0.1,318.0g:0.1&'.repeat(8)}v=1`;

  test('draws exactly the modules of the code, with a quiet border of four', () => {
    const { size, path } = qrCode(link);
    const wanted = encode(link, { ecc: 'L', boostEcc: true, border: 4 });
    expect(path).toMatch(/^(?:M\d+ \d+h\d+v1H\d+z)+$/);
    expect(drawn(path, size)).toEqual(wanted.data);
    for (let at = 0; at < size; at += 1) {
      for (const edge of [0, 1, 2, 3]) {
        expect(drawn(path, size)[edge]?.[at]).toBe(false);
        expect(drawn(path, size)[at]?.[edge]).toBe(false);
      }
    }
  });

  test('says how large to print it', () => {
    const { size, leastMillimetres } = qrCode(link);
    expect(leastMillimetres / size).toBeGreaterThanOrEqual(0.4);
    expect(leastMillimetres).toBeLessThan(40);
  });

  test('refuses what fits in no code', () => {
    expect(() => qrCode('x'.repeat(3000))).toThrow('too long for a QR code');
  });
});
